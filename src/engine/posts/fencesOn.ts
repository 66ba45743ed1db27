import type { FenceSpec } from '../../site/fenceSpec.ts';
import { inches } from '../../units/inches.ts';
import { followGrade } from '../ground/followGrade.ts';
import type { GradedFence, GradePost } from '../ground/gradedFence.ts';
import { profileHeight } from '../ground/profileHeight.ts';
import { stepsOnWall } from '../ground/stepsOnWall.ts';
import { stepsFor } from '../ground/stepsFor.ts';
import type { Space } from '../layout.ts';
import type { PostId } from '../post.ts';
import type { CourseGround } from './groundUnder.ts';
import type { RunRow } from './runPosts.ts';
import type { SeatedCourse } from './seatLines.ts';

/** The fabric of one stretch on its run, over ground of which all is known. */
export interface StretchOnGrade extends GradedFence {
  readonly stretch: number;
  /** The ids of the posts of `posts`, in the same order. */
  readonly stands: readonly PostId[];
}

interface Pieces {
  readonly stretch: number;
  readonly first: number;
  last: number;
}

const stretchesOf = (spaces: readonly Space[]): Pieces[] => {
  const pieces: Pieces[] = [];
  spaces.forEach((space, n) => {
    if (space.kind !== 'bay') return;
    const last = pieces.at(-1);
    if (last?.stretch === space.stretch && last.last === n) last.last = n + 1;
    else pieces.push({ stretch: space.stretch, first: n, last: n + 1 });
  });
  return pieces;
};

const isStepped = ({ course }: SeatedCourse, station: number): boolean => {
  const place = course.starts.findLastIndex((start) => start <= station);
  const leg = course.legs[Math.max(0, place)]?.id;
  return leg !== undefined && course.chain.line.stepped[leg] === true;
};

/** How the fabric hangs of a stretch that begins at a station. */
const fenceOf = (seated: SeatedCourse, station: number) => {
  if ((seated.course.wall?.steps ?? 0) > 0) return stepsOnWall;
  return isStepped(seated, station) ? stepsFor : followGrade;
};

/**
 * The fabric of every stretch of a run over known ground: along the grade, or in level steps where
 * the leg that it begins on asks for them, or as the wall steps that it stands on. Stations of posts are in plan.
 */
export const fencesOn = (
  seated: SeatedCourse,
  row: Pick<RunRow, 'posts' | 'spaces'>,
  { profile }: CourseGround,
): readonly StretchOnGrade[] =>
  stretchesOf(row.spaces).flatMap(({ stretch, first, last }): StretchOnGrade[] => {
    const own = row.posts.slice(first, last + 1);
    const posts = own.flatMap(({ station }): GradePost[] => {
      const ground = profileHeight(profile, station);
      return ground === null ? [] : [{ at: station, ground }];
    });
    if (posts.length < own.length) return [];
    const fabric = fabricOf(seated.spec);
    const fence = fenceOf(seated, own[0]?.station ?? 0)(posts, fabric);
    return [{ ...fence, stretch, stands: own.map(({ post }) => post) }];
  });

/** Posts stand above this by what each kind of them does on level ground. */
const fabricOf = ({ fabricHeight }: FenceSpec) => ({
  fabric: fabricHeight,
  above: inches(0),
  clear: inches(0),
});
