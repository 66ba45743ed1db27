import type { SetResult } from '../../../engine/set/setOf.ts';

/** The verdict in large words and what is left for the latch, for a crew at arm's length. */
export interface VerdictWords {
  readonly level: 'holds' | 'ask' | 'stop';
  readonly words: string;
  readonly gap: string;
}

/** Lengths are inches, written by `write`. */
export const verdictWords = (
  { opening, widths, governs, remedies }: SetResult,
  write: (length: number) => string,
): VerdictWords => {
  const { verdict, by, planned, least, most } = governs.gap;
  const latches = opening.terms.filter(({ spread }) => spread === 'catch').length;
  const where = widths.length > 1 ? ` at the ${governs.at}` : '';
  const spread =
    most - least > 1e-6 ? `, by their spread from ${write(least)} to ${write(most)}` : '';
  const left =
    planned < 0
      ? `The leaves are ${write(-planned)} too wide to go in`
      : `Leaves a gap of ${write(planned)}${latches > 1 ? ' in all' : ''}`;
  const gap = `${left}${where}${spread}.`;
  if (verdict === 'holds') {
    const words = remedies.length > 0 ? 'Holds once adjusted' : 'Holds';
    return { level: 'holds', words, gap };
  }
  if (verdict === 'may hold') return { level: 'ask', words: 'May hold: measure the hinges', gap };
  const side = verdict === 'too narrow' ? 'Too narrow' : 'Too wide';
  return { level: 'stop', words: `${side} by ${write(by)}`, gap };
};
