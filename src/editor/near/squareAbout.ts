import { expandBounds, type Bounds } from '../../geometry/bounds.ts';
import { spot } from '../../geometry/tolerance.ts';
import type { Aim } from '../aim.ts';

/** A place on the ground and how far about it is asked for, in inches. */
export type About = Pick<Aim, 'at' | 'reach'>;

/**
 * The square that holds all that is within reach of a place, inches on the ground. It is 1/64 in wider, which is
 * more than rounding adds up to.
 */
export const squareAbout = ({ at: { x, y }, reach }: About): Bounds =>
  expandBounds({ minX: x, minY: y, maxX: x, maxY: y }, reach + spot);
