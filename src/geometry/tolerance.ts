import { inches } from '../units/inches.ts';
import type { Inches } from '../units/inches.ts';

/**
 * Points nearer to each other than this are one spot, in inches. A tape is read to 1/32 in at
 * best and a lath is wider than this, so nobody can set two marks that close.
 */
export const spot: Inches = inches(1 / 64);

/**
 * The farthest a coordinate may lie from the origin, in inches: ten miles. The other tolerances
 * are derived for sites of this size.
 */
export const farthest: Inches = inches(633_600);

/**
 * What rounding may add up to, in the unit of the space. Coordinates below 2^20 in (16 miles) lie
 * at most 2^-33 in apart in float64; the constructions here lose fewer than 2^9 of those steps,
 * which is 2^-24 in. 2^-20 in (about a millionth) is 16 times that and 2^14 times below `spot`.
 */
export const slack = 2 ** -20;

/**
 * Lines whose directions differ by a smaller sine than this are parallel: across the diagonal of
 * the largest site, 2√2 × `farthest`, they drift apart by less than one `spot`. It is about 9e-9.
 */
export const parallelSine = spot / (2 * Math.SQRT2 * farthest);
