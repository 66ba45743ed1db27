import { fencePipes } from './pipes.ts';
import type { FencePipe } from './pipes.ts';

/**
 * The pipe of regular wall (schedule 40) with an actual outside diameter in inches; where the
 * table has two regular walls, the thicker. Throws a RangeError for a diameter that the table
 * does not have.
 */
export const schedule40 = (od: number): FencePipe => {
  const thickest = fencePipes
    .filter((pipe) => pipe.od === od)
    .sort((a, b) => b.wall - a.wall)
    .at(0);
  if (thickest) return thickest;
  const known = [...new Set(fencePipes.map((pipe) => pipe.od))].join(', ');
  throw new RangeError(`no fence pipe is ${od} in outside; expected one of ${known}`);
};
