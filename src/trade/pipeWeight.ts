import type { Inches } from '../units/inches.ts';

/**
 * Weight of plain round steel pipe in pounds per foot: 10.69 (D − t) t, with the actual outside
 * diameter D and wall t. The factor is π × 12 × 0.2836 lb per cubic inch of steel (from memory:
 * the plain-end formula of ASME B36.10M). A wall of half the diameter is a solid bar.
 */
export const pipeWeight = (od: Inches, wall: Inches): number => 10.69 * (od - wall) * wall;
