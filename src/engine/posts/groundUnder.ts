import { gradeLine, levelLine, type GradeLine } from '../ground/gradeLine.ts';
import { heightAt } from '../ground/heightAt.ts';
import type { Ground } from '../ground/groundOf.ts';
import type { Profile } from '../ground/profile.ts';
import { trackPoints } from '../../geometry/track.ts';
import { inches } from '../../units/inches.ts';
import { profileAlong } from '../ground/profileAlong.ts';
import type { WallTop } from '../../site/wallTop.ts';
import { wallProfile } from '../wall/wallProfile.ts';
import type { Stop } from './chain.ts';
import type { Course } from './course.ts';

/** The ground under a course, and how a tape that is laid on it measures. */
export interface CourseGround {
  readonly profile: Profile;
  readonly grade: GradeLine;
}

/** How far straight pieces may lie inside a curve whose ground is looked for, inches. */
const off = 1 / 64;

/** The profile of a curve, found along straight pieces, by stations along the curve. */
const asLongAs = ({ bow, length }: Course, profile: Profile): Profile => {
  if (bow === 0 || profile.length === 0) return profile;
  const pace = length / profile.length;
  return {
    length,
    known: profile.known.map((part) => part.map(({ at, z }) => ({ at: inches(at * pace), z }))),
    unknown: profile.unknown.map(({ from, to }) => ({ from: from * pace, to: to * pace })),
  };
};

/** A tape measures along a top that slopes; over steps it is held level. */
const topUnder = ({ length, from, to }: Course, wall: WallTop, ground: Ground | null) => {
  const heightOf = ({ at }: Stop) => (ground === null ? null : heightAt(ground, at));
  const profile = wallProfile(wall, length, { start: heightOf(from), end: heightOf(to) });
  return { profile, grade: wall.steps === 0 ? gradeLine(profile) : levelLine(length) };
};

/** The ground under a course, or the top of the wall it is on; null where nothing of it is known. */
export const groundUnder = (course: Course, ground: Ground | null): CourseGround | null => {
  if (course.wall !== null) return topUnder(course, course.wall, ground);
  if (ground === null) return null;
  const { legs } = course;
  const points = [
    ...legs.slice(0, 1).map(({ start }) => start),
    ...legs.flatMap((leg) => trackPoints(leg, off).slice(1)),
  ];
  const profile = asLongAs(course, profileAlong(ground, points));
  return profile.known.length === 0 ? null : { profile, grade: gradeLine(profile) };
};
