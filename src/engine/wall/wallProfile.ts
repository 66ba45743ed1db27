import { spot } from '../../geometry/tolerance.ts';
import type { WallTop } from '../../site/wallTop.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Profile, ProfileStation } from '../ground/profile.ts';
import { wallSteps } from './wallSteps.ts';

const station = (at: number, z: number): ProfileStation => ({ at: inches(at), z: inches(z) });

/** The heights of the ground at the ends of a leg, inches; null where nothing is known. */
export interface GroundAtEnds {
  readonly start: number | null;
  readonly end: number | null;
}

/** Where the top begins so that it is nowhere lower over the ground at an end than its wall is high. */
const footOf = ({ height, rise }: WallTop, { start, end }: GroundAtEnds): number =>
  height + Math.max(start ?? end ?? 0, (end ?? start ?? 0) - rise);

/**
 * The top of a wall under a leg of `length` inches in plan, as a profile. Where the ground
 * is known at one end only the other counts as level with it; where at neither, both are at 0. A step takes up 1/64 in of it, so that no place has
 * two heights.
 */
export const wallProfile = (wall: WallTop, length: Inches, ground: GroundAtEnds): Profile => {
  const foot = footOf(wall, ground);
  const between = wallSteps(wall, length).flatMap((at, n) => [
    station(at - spot / 2, foot + (wall.rise * n) / wall.steps),
    station(at + spot / 2, foot + (wall.rise * (n + 1)) / wall.steps),
  ]);
  const top = [station(0, foot), ...between, station(length, foot + wall.rise)];
  return { length, known: [top], unknown: [] };
};
