import type { Opening, Term } from '../../engine/opening.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import type { Column, Table } from './table.ts';
import { phrase, phraseOf } from '../../phrases/phrase.ts';

/** The three ranges of an opening: holds for sure, may hold, and by the statistics of its terms. */
export const ranges = ['sure', 'possible', 'statistical'] as const;

export type Range = (typeof ranges)[number];

/** One line of a working: what is added up for the lower and for the upper end, inches. */
export interface RangeStep {
  readonly label: string;
  readonly from: number;
  readonly to: number;
}

const isUnsure = ({ spread }: Term): boolean => spread === 'uncertain';

const middle = ({ low, high }: Term): number => (low + high) / 2;

/** What of an unsure term counts for each end; the rest counts from its smallest to its largest. */
const unsureEnds: Readonly<Record<Range, (term: Term) => readonly [from: number, to: number]>> = {
  sure: ({ low, high }) => [high, low],
  possible: ({ low, high }) => [low, high],
  statistical: (term) => [middle(term), middle(term)],
};

/**
 * What is added up for the ends of a range, term by term in the order of the opening; for the
 * statistical one also the root of the sum of the squares of the unsure terms' half spreads. The
 * sums are the ends that the opening has.
 */
export const rangeSteps = (
  { terms }: Pick<Opening, 'terms'>,
  range: Range,
): readonly RangeStep[] => {
  const steps = terms.map((term): RangeStep => {
    const [from, to] = isUnsure(term) ? unsureEnds[range](term) : [term.low, term.high];
    return { label: term.label, from, to };
  });
  if (range !== 'statistical') return steps;
  const usual = Math.hypot(...terms.filter(isUnsure).map(({ low, high }) => (high - low) / 2));
  return [
    ...steps,
    { label: phrase`Root of the sum of squared half spreads`, from: usual, to: -usual },
  ];
};

/** The ends of a range as the opening has them, inches. */
export const rangeEnds = (opening: Opening, range: Range): readonly [from: Inches, to: Inches] => {
  if (range === 'sure') return [opening.holdsFrom, opening.holdsTo];
  if (range === 'possible') return [opening.mayFrom, opening.mayTo];
  return [opening.likelyFrom, opening.likelyTo];
};

const titles: Readonly<Record<Range, string>> = {
  sure: phrase`Working of the sure range`,
  possible: phrase`Working of the possible range`,
  statistical: phrase`Working of the statistical range`,
};

const columns: readonly Column[] = [
  { heading: phrase`What is added up`, align: 'left', share: 2 },
  { heading: phraseOf('width')`From`, align: 'right', share: 1 },
  { heading: phraseOf('width')`To`, align: 'right', share: 1 },
];

/** The working of one range as a table, its sums in the last row. */
export const rangeTable = (opening: Opening, range: Range, style: LengthStyle): Table => {
  const write = (value: number): string => formatLength(inches(value), style);
  const [from, to] = rangeEnds(opening, range);
  return {
    title: titles[range],
    columns,
    rows: [
      ...rangeSteps(opening, range).map((step) => [step.label, write(step.from), write(step.to)]),
      [phrase`Added up`, write(from), write(to)],
    ],
  };
};
