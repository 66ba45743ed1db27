import { inches, type Inches } from '../../units/inches.ts';

/** Three lengths that make a square corner: two legs, and the way across between their ends. */
export interface Triple {
  readonly short: Inches;
  readonly long: Inches;
  readonly across: Inches;
}

/** How much room there is for the legs, and how long the tape is that is pulled across; inches. */
export interface SquareRoom {
  readonly legs: readonly [Inches, Inches];
  readonly tape: Inches;
}

/** Whole numbers that are easily found on a tape: 15-20-25, 30-40-50 and their like. */
const round = [1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60, 80, 100] as const;

const mostTriples = 5;

const triple = (size: number): Triple => ({
  short: inches(3 * size),
  long: inches(4 * size),
  across: inches(5 * size),
});

/**
 * The multiples of 3-4-5 in whole units (inches long: a foot, half a metre) that fit in the room,
 * whichever leg is the longer: the largest of all, then the rounder ones below it; the larger, the
 * truer the corner. None where not even 3-4-5 of one unit fits.
 */
export const triplesIn = ({ legs, tape }: SquareRoom, unit: Inches): readonly Triple[] => {
  const [short, long] = [Math.min(...legs), Math.max(...legs)];
  const most = Math.floor(Math.min(short / 3, long / 4, tape / 5) / unit + 1e-9);
  if (!(most >= 1)) return [];
  const below = round.filter((times) => times < most).toReversed();
  return [most, ...below].slice(0, mostTriples).map((times) => triple(times * unit));
};
