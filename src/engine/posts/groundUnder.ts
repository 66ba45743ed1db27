import { gradeLine, type GradeLine } from '../ground/gradeLine.ts';
import type { Ground } from '../ground/groundOf.ts';
import type { Profile } from '../ground/profile.ts';
import { profileAlong } from '../ground/profileAlong.ts';
import type { Course } from './course.ts';

/** The ground under a course, and how a tape that is laid on it measures. */
export interface CourseGround {
  readonly profile: Profile;
  readonly grade: GradeLine;
}

/** The ground under a course; null where nothing of it is known. */
export const groundUnder = ({ legs }: Course, ground: Ground | null): CourseGround | null => {
  if (ground === null) return null;
  const points = [...legs.slice(0, 1).map(({ start }) => start), ...legs.map(({ end }) => end)];
  const profile = profileAlong(ground, points);
  return profile.known.length === 0 ? null : { profile, grade: gradeLine(profile) };
};
