import { bendingDivisor } from '../../trade/windTerms.ts';
import type { Inches } from '../../units/inches.ts';
import { pipeSection } from './pipeSection.ts';

/** A pipe of a steel that yields at so many pounds per square inch. */
export interface Member {
  readonly od: Inches;
  readonly wall: Inches;
  readonly yields: number;
}

/**
 * The moment that a pipe may bear at allowable strength, inch-pounds: its plastic moment over 1.67.
 * Chain link pipe is too thick in the wall to buckle before it yields.
 */
export const bendingCapacity = ({ yields, ...pipe }: Member): number =>
  (yields * pipeSection(pipe).plastic) / bendingDivisor;
