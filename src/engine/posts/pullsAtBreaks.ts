import { inches } from '../../units/inches.ts';
import { gradeBreaks } from '../ground/gradeBreaks.ts';
import { openNear } from './openNear.ts';
import type { CourseGround } from './groundUnder.ts';
import type { HeldPost } from './runPosts.ts';
import type { SeatedCourse } from './seatLines.ts';
import type { Closed } from './spaceOut.ts';

/**
 * Pull posts where the grade changes by more than a spec allows, told over half its largest bay on
 * either side; off closed ground by the least move within that reach, else none.
 */
export const pullsAtBreaks = (
  { course, spec }: SeatedCourse,
  ground: CourseGround | null,
  closed: readonly Closed[],
): readonly HeldPost[] => {
  const { pullGrade: limit, maxBay } = spec;
  if (ground === null || limit === null || !Number.isFinite(maxBay)) return [];
  if (course.wall !== null && course.wall.steps > 0) return [];
  const reach = inches(maxBay / 2);
  const { chain, from } = course;
  return gradeBreaks(ground.profile, { reach, limit }).flatMap(({ at }, n): HeldPost[] => {
    const station = openNear(at, reach, closed);
    const id = `post:${chain.id}:${from.vertex}:break-${n + 1}` as const;
    return station === null ? [] : [{ id, station, kind: 'pull' }];
  });
};
