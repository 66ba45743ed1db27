import { slack } from '../../geometry/tolerance.ts';
import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { LineId, SpecId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import { frostSource } from '../../trade/frost.ts';
import { bendingSource, windSource } from '../../trade/windTerms.ts';
import { mostOpenFrame, openFrameSource } from '../../trade/openFrames.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Flag } from '../flag.ts';
import type { LineLayout } from '../layout.ts';
import type { Mend } from '../mend.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { buildStructure, type BuildStructure } from '../structure/buildStructure.ts';
import { longestBays } from '../structure/longestBays.ts';
import { lineName } from './names.ts';

/** A build where it stands for the first time. */
interface Stood {
  readonly id: SpecId;
  readonly spec: FenceSpec;
  readonly line: LineLayout;
  readonly structure: BuildStructure;
}

type Say = (length: Inches) => string;

const flag = (
  { line }: Stood,
  { rule, message, mend }: Pick<Flag, 'rule' | 'message' | 'mend'>,
): Flag => ({
  level: 'settle',
  rule,
  place: { kind: 'line', id: line.id },
  at: line.legs[0]?.start ?? { x: 0, y: 0 },
  message,
  ...(mend === undefined ? {} : { mend }),
});

/** Holes as deep as a rule asks for, in whole inches. */
const deeper = ({ id }: Stood, depth: Inches): Mend => ({
  kind: 'deepen holes',
  spec: id,
  depth: inches(Math.ceil(depth - slack)),
});

const inWind = (stood: Stood, site: Site, say: Say): Flag[] => {
  const { spec, structure } = stood;
  const { wind } = structure;
  const told = site.conditions.wind;
  if (wind === null || told === null) return [];
  const where = `${spec.label} in ${told.speed} mph, exposure ${told.exposure}`;
  if (wind === 'too solid') {
    const message = `${where}: fabric more than ${100 * mostOpenFrame} % solid is no open frame (${openFrameSource.text}): its wind is for a licensed professional to say.`;
    return [flag(stood, { rule: 'too solid for the table', message })];
  }
  const { bends, capacity, bay, longest, steel } = wind;
  if (bends <= capacity) return [];
  const share = Math.ceil((100 * bends) / capacity);
  const message = `${where}: line posts ${say(bay)} apart bend by ${share} % of what ${spec.linePost.label} of ${steel} steel may bear; expected bays of ${say(longest)} at most, or stronger posts (${windSource.text}; ${bendingSource.text}).`;
  return [flag(stood, { rule: 'posts bend in the wind', message, mend: { kind: 'bays by wind' } })];
};

const rulesOver = ({ structure }: Stood): string[] =>
  structure.footing.rows
    .filter(({ depth }) => depth === null || depth > structure.depth)
    .map(({ rule }) => rule);

const deep = (stood: Stood, site: Site, say: Say): Flag[] => {
  const { structure, line } = stood;
  const over = new Set(rulesOver(stood));
  const name = lineName(site, line.id);
  const frost = structure.footing.rows.find(({ rule }) => rule === 'frost');
  const pole = structure.footing.rows.find(({ rule }) => rule === 'pole');
  return [
    ...(frost?.depth != null && over.has('frost')
      ? [
          flag(stood, {
            rule: 'holes above frost',
            message: `${name}: holes ${say(structure.depth)} deep; frost asks for ${say(frost.depth)} (${frostSource.text}).`,
            mend: deeper(stood, frost.depth),
          }),
        ]
      : []),
    ...(pole !== undefined && over.has('pole')
      ? [
          flag(stood, {
            rule: 'holes shallow for the wind',
            message: `${name}: line post holes ${say(structure.depth)} deep; the pole formula asks for ${pole.depth === null ? 'more than 40 ft' : say(pole.depth)} in ${structure.lateral} psf a foot (${pole.source}).`,
            ...(pole.depth === null ? {} : { mend: deeper(stood, pole.depth) }),
          }),
        ]
      : []),
  ];
};

/** What wind, frost and ground ask of the line posts of each build; nothing where none of it was told. */
export const checkStructure = (site: Site, laid: LaidLines): Flag[] => {
  const { wind, frost } = site.conditions;
  if (wind === null && frost === null) return [];
  const say: Say = (length) => formatLength(length, site.lengths);
  return [...longestBays(site, laid)].flatMap(
    ([id, { line, bay }]: [SpecId, { line: LineId; bay: Inches }]) => {
      const [spec, laidOut] = [site.specs[id], laid.lines[line]];
      if (spec === undefined || laidOut === undefined) return [];
      const structure = buildStructure(spec, site.conditions, bay);
      const stood = { id, spec, line: laidOut, structure };
      return [...inWind(stood, site, say), ...deep(stood, site, say)];
    },
  );
};
