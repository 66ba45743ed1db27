import type { SetResult } from '../../engine/set/setOf.ts';
import type { SetWords } from './setWords.ts';
import { phrase } from '../../phrases/phrase.ts';

/** What of an opening is not sure, as a crew is told to measure it. */
const isUnsure = ({ opening }: SetResult, wanted: 'hinge' | 'leaf'): boolean =>
  opening.terms.some(
    ({ role, spread, low, high }) => role === wanted && spread === 'uncertain' && low < high,
  );

const measureText = (set: SetResult): string => {
  if (!isUnsure(set, 'leaf')) return phrase`May hold: measure the hinges`;
  return isUnsure(set, 'hinge')
    ? phrase`May hold: measure the hinges and the leaves`
    : phrase`May hold: measure the leaves`;
};

const headline = (set: SetResult, write: (length: number) => string): string => {
  const { verdict, by } = set.governs.gap;
  if (verdict === 'holds')
    return set.remedies.length > 0 ? phrase`Holds once adjusted` : phrase`Holds`;
  if (verdict === 'too narrow') return phrase`Too narrow by ${write(by)}`;
  if (verdict === 'too wide') return phrase`Too wide by ${write(by)}`;
  // where measuring is not the first remedy, no size suits both top and bottom
  return set.remedies[0]?.kind === 'measure'
    ? measureText(set)
    : phrase`May hold at the top or at the bottom, not at both`;
};

const ends = { top: phrase` at the top`, bottom: phrase` at the bottom` } as const;

const leaves = (gap: string, latches: number): string =>
  latches > 1 ? phrase`it leaves a gap of ${gap} in all` : phrase`it leaves a gap of ${gap}`;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const levels = {
  holds: 'holds',
  'may hold': 'ask',
  'too narrow': 'stop',
  'too wide': 'stop',
} as const;

/**
 * The verdict on a gate as it was set and what is left for the latch. Lengths are inches, written
 * by `write`; the place is named where top and bottom were both measured.
 */
export const verdictWords = (set: SetResult, write: (length: number) => string): SetWords => {
  const { opening, widths, governs } = set;
  const { verdict, planned, least, most } = governs.gap;
  const latches = opening.terms.filter(({ spread }) => spread === 'catch').length;
  const where = widths.length > 1 ? ends[governs.at] : '';
  const spread =
    write(most) === write(least)
      ? ''
      : phrase`, by their spread from ${write(least)} to ${write(most)}`;
  const left =
    planned < 0
      ? phrase`the leaves are ${write(-planned)} too wide to go in`
      : leaves(write(planned), latches);
  // what is left as planned says nothing of what is left once it is adjusted
  const when =
    verdict === 'holds' && set.remedies.length > 0 ? phrase`Before that ${left}` : capital(left);
  return {
    level: levels[verdict],
    words: headline(set, write),
    gap: `${when}${where}${spread}.`,
  };
};
