import { inches } from '../units/inches.ts';
import type { WallTop } from './wallTop.ts';

/**
 * A wall parted at a share of its length, from 0 to 1: its rise and its steps go to the part that they
 * are in. The level parts of each are of one length again, so that steps may move along it.
 */
export const splitWall = (wall: WallTop, share: number): readonly [WallTop, WallTop] => {
  const { rise, steps } = wall;
  const before = Array.from({ length: steps }, (_, n) => (n + 1) / (steps + 1)).filter(
    (at) => at < share,
  ).length;
  const low = steps === 0 ? rise * share : (rise * before) / steps;
  return [
    { ...wall, rise: inches(low), steps: before },
    { ...wall, rise: inches(rise - low), steps: steps - before },
  ];
};
