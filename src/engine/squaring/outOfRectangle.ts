import { inches, type Inches } from '../../units/inches.ts';
import { squareAcross } from './squareAcross.ts';

/** Two sides of a rectangle A B C D, and what was read from A to C and from B to D; inches. */
export interface Diagonals {
  /** From A to B, as from D to C. */
  readonly base: Inches;
  /** From A to D, as from B to C. */
  readonly side: Inches;
  readonly ac: Inches;
  readonly bd: Inches;
}

/** How the ground lies by its diagonals. */
export interface OutOfRectangle {
  /**
   * By how much the far side has slid along the base: both its stakes, C and D, above zero the way from
   * D to C, where AC is the longer. They go back by so much, the sides held at their length.
   */
  readonly slid: Inches;
  /** What the diagonals have more than these sides can, as one diagonal; below zero less. */
  readonly misfit: Inches;
}

/**
 * How far ground with equal opposite sides is out of square by its two diagonals. It is a parallelogram:
 * the squares of the diagonals differ by four times the base times what the far side has slid, and
 * together they are twice the squares of both sides (law of cosines, parallelogram law).
 */
export const outOfRectangle = ({ base, side, ac, bd }: Diagonals): OutOfRectangle => ({
  slid: inches((ac ** 2 - bd ** 2) / (4 * base)),
  misfit: inches(Math.sqrt((ac ** 2 + bd ** 2) / 2) - squareAcross(base, side)),
});
