import type { SetResult } from '../../engine/set/setOf.ts';
import type { SetWords } from './setWords.ts';

/** What of an opening is not sure, as a crew is told to measure it. */
const toMeasure = ({ opening }: SetResult): string =>
  (['hinge', 'leaf'] as const)
    .filter((wanted) =>
      opening.terms.some(
        ({ role, spread, low, high }) => role === wanted && spread === 'uncertain' && low < high,
      ),
    )
    .map((role) => (role === 'hinge' ? 'the hinges' : 'the leaves'))
    .join(' and ');

const headline = (set: SetResult, write: (length: number) => string): string => {
  const { verdict, by } = set.governs.gap;
  if (verdict === 'holds') return set.remedies.length > 0 ? 'Holds once adjusted' : 'Holds';
  if (verdict !== 'may hold') {
    return `${verdict === 'too narrow' ? 'Too narrow' : 'Too wide'} by ${write(by)}`;
  }
  // where measuring is not the first remedy, no size suits both top and bottom
  return set.remedies[0]?.kind === 'measure'
    ? `May hold: measure ${toMeasure(set)}`
    : 'May hold at the top or at the bottom, not at both';
};

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
  const where = widths.length > 1 ? ` at the ${governs.at}` : '';
  const spread =
    write(most) === write(least) ? '' : `, by their spread from ${write(least)} to ${write(most)}`;
  const left =
    planned < 0
      ? `the leaves are ${write(-planned)} too wide to go in`
      : `it leaves a gap of ${write(planned)}${latches > 1 ? ' in all' : ''}`;
  // what is left as planned says nothing of what is left once it is adjusted
  const when =
    verdict === 'holds' && set.remedies.length > 0 ? `Before that ${left}` : capital(left);
  return {
    level: levels[verdict],
    words: headline(set, write),
    gap: `${when}${where}${spread}.`,
  };
};
