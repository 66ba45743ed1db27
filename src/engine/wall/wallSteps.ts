import type { WallTop } from '../../site/wallTop.ts';

/**
 * Where the top of a wall steps, inches in plan from the start of its leg, rising: between level
 * parts of one length. None for a wall without steps.
 */
export const wallSteps = ({ steps, rise }: WallTop, length: number): readonly number[] =>
  rise === 0 ? [] : Array.from({ length: steps }, (_, n) => ((n + 1) * length) / (steps + 1));
