import { formatArea, formatCount } from '../../units/formatArea.ts';
import { formatBearing } from '../../units/formatBearing.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { radians } from '../../units/radians.ts';
import type { Calls } from './calls.ts';
import { crossing } from './crossing.ts';
import { slips } from './slips.ts';
import type { Traverse } from './traverse.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Something to know of calls before a lot is drawn by them, in one line. */
export interface CallRemark {
  /** `stop`: there is no whole lot. `caution`: know this. */
  readonly level: 'stop' | 'caution';
  readonly text: string;
}

/** How calls are judged and how lengths are written. */
export interface CallTerms {
  /** What they have to close to: the n of 1:n. */
  readonly parts: number;
  readonly style: LengthStyle;
}

/** An area that differs from the deed's by more than this share is told. Ours, no published source. */
const areaShare = 0.01;

const many = (lines: readonly number[]): string =>
  `${lines.length === 1 ? phrase`line` : phrase`lines`} ${lines.join(', ')}`;

const missed = ({ pieces }: Calls): readonly CallRemark[] => {
  const lines = pieces.flatMap(({ found, line }) => (found.kind === 'fault' ? [line] : []));
  if (lines.length === 0) return [];
  const [what, sides] =
    lines.length === 1
      ? [phrase`1 call was not understood`, phrase`its side is`]
      : [phrase`${lines.length} calls were not understood`, phrase`their sides are`];
  return [{ level: 'stop', text: phrase`${what} (${many(lines)}): ${sides} missing.` }];
};

const azimuthBack = (azimuth: number) => radians((azimuth + Math.PI) % (2 * Math.PI));

const openText = (told: Traverse, { style }: CallTerms): string => {
  const { azimuth, length } = told.misclosure;
  const back = azimuth === null ? '' : formatBearing(azimuthBack(azimuth));
  return phrase`The calls do not come back to where they begin: a last side ${back} ${formatLength(length, style)} would close them.`;
};

const slipText = (told: Traverse, { parts, style }: CallTerms): readonly string[] =>
  slips(told, parts).map(({ course, kind, azimuth, length, precision }) => {
    const was = told.courses[course];
    const [from, to] =
      kind === 'bearing'
        ? [formatBearing(was?.azimuth ?? azimuth), formatBearing(azimuth)]
        : [formatLength(was?.length ?? length, style), formatLength(length, style)];
    const then = Number.isFinite(precision)
      ? phrase`to 1 in ${formatCount(precision)}`
      : phrase`exactly`;
    return phrase`If course ${course + 1} were ${to} in place of ${from}, they would close ${then}: look at the deed again.`;
  });

const closing = (told: Traverse, terms: CallTerms): readonly CallRemark[] => {
  const { closes, precision, courses } = told;
  if (courses.length === 0)
    return [{ level: 'stop', text: phrase`There is no call with a bearing and a distance.` }];
  if (closes === 'open') return [{ level: 'stop', text: openText(told, terms) }];
  if (precision === null || precision >= terms.parts) return [];
  const text = phrase`The calls close to 1 in ${formatCount(precision)}, worse than the 1 in ${formatCount(terms.parts)} that is asked for: a figure is wrong, or a call is missing. Balancing hides that and does not mend it.`;
  return [text, ...slipText(told, terms)].map((line) => ({ level: 'caution', text: line }));
};

const enclosed = (calls: Calls, { lot }: Traverse): readonly CallRemark[] => {
  if (lot === null) return [];
  const sides = crossing(lot.corners);
  const off = calls.area === null ? 0 : Math.abs(lot.area / calls.area - 1);
  const texts = [
    ...(sides === null
      ? []
      : [phrase`Sides ${sides[0] + 1} and ${sides[1] + 1} cross: the area says nothing.`]),
    ...(off <= areaShare
      ? []
      : [
          phrase`The deed says ${formatArea(calls.area ?? 0)}; its calls enclose ${formatArea(lot.area)}.`,
        ]),
  ];
  return texts.map((text) => ({ level: 'caution', text }));
};

/** What is wrong with calls or in doubt, the worst first; none where they close as well as is asked for. */
export const callRemarks = (
  calls: Calls,
  told: Traverse,
  terms: CallTerms,
): readonly CallRemark[] => [...missed(calls), ...closing(told, terms), ...enclosed(calls, told)];
