import type { Layout } from '../../engine/layout.ts';
import { buildStructure, type BuildStructure } from '../../engine/structure/buildStructure.ts';
import { longestBays } from '../../engine/structure/longestBays.ts';
import type { FootingRow } from '../../engine/structure/footing.ts';
import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { Site } from '../../site/site.ts';
import { bendingSource, windSource } from '../../trade/windTerms.ts';
import { openFrameSource } from '../../trade/openFrames.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { Inches } from '../../units/inches.ts';
import type { Column, Table } from './table.ts';

const columns: readonly Column[] = [
  { heading: 'Line posts of', align: 'left', share: 0.5 },
  { heading: 'Planned', align: 'left', share: 0 },
  { heading: 'Compared with', align: 'left', share: 1 },
  { heading: 'By', align: 'left', share: 0.8 },
];

type Say = (length: Inches) => string;

const bent = (inchPounds: number): string => `${Math.round(inchPounds / 12)} ft-lb`;

interface Words {
  readonly spec: FenceSpec;
  readonly conditions: Site['conditions'];
  readonly say: Say;
}

const windRows = ({ wind }: BuildStructure, { spec, conditions, say }: Words): string[][] => {
  const told = conditions.wind;
  if (wind === null || told === null) return [];
  const place = `${told.speed} mph, exposure ${told.exposure}`;
  if (wind === 'too solid') {
    return [['', `${place}: more solid than open frames go`, openFrameSource.text]];
  }
  const { bay, bends, capacity, longest, push, solidity, steel } = wind;
  return [
    [
      `bays to ${say(bay)}`,
      `${place}, ${(100 * solidity).toFixed(0)} % solid: ${Math.round(push.pounds)} lb at ${say(push.height)}, ${bent(bends)} of ${bent(capacity)} that ${spec.linePost.label} of ${steel} steel may bear; bays to ${say(longest)}`,
      `${windSource.text}; ${openFrameSource.text}; ${bendingSource.text}`,
    ],
  ];
};

const askedText = ({ depth }: FootingRow, say: Say): string =>
  depth === null ? 'more than 40 ft deep' : `${say(depth)} deep`;

const ruleRows = ({ footing, depth, lateral }: BuildStructure, say: Say): string[][] =>
  footing.rows.map((row) => [
    `holes ${say(depth)} deep`,
    `${row.rule}${row.rule === 'pole' ? ` in ${lateral} psf a foot` : ''}: ${askedText(row, say)}`,
    row.source,
  ]);

/**
 * What wind, frost and ground ask of the line posts of each build beside what is planned; no rows where
 * nobody has told of any of it.
 */
export const structureTable = (site: Site, layout: Pick<Layout, 'lines'>): Table => {
  const { conditions, lengths, specs } = site;
  const untold = conditions.wind === null && conditions.frost === null;
  const say: Say = (length) => formatLength(length, lengths);
  const rows = untold
    ? []
    : [...longestBays(site, layout)].flatMap(([id, { bay }]) => {
        const spec = specs[id];
        if (spec === undefined) return [];
        const structure = buildStructure(spec, conditions, bay);
        const own = [
          ...windRows(structure, { spec, conditions, say }),
          ...ruleRows(structure, say),
        ];
        return own.map((row, n) => [n === 0 ? spec.label : '', ...row]);
      });
  return { title: 'Line posts, compared', columns, rows };
};
