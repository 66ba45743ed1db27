import type { Inches } from '../units/inches.ts';
import { phrase } from '../phrases/phrase.ts';
import type { Source } from './source.ts';

/** Where the weight of pipe comes from. */
export const pipeWeightSource: Source = {
  text: phrase`weights of pipe by the plain-end formula of ASME B36.10M, from memory; of hardware: ours, no published source`,
  status: 'memory',
};

/**
 * Weight of plain round steel pipe in pounds per foot: 10.69 (D − t) t, with the actual outside
 * diameter D and wall t. The factor is π × 12 × 0.2836 lb per cubic inch of steel (from memory:
 * the plain-end formula of ASME B36.10M). A wall of half the diameter is a solid bar.
 */
export const pipeWeight = (od: Inches, wall: Inches): number => 10.69 * (od - wall) * wall;
