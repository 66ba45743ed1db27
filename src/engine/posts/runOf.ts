import { inches, type Inches } from '../../units/inches.ts';
import { radians } from '../../units/radians.ts';
import { slopeAt } from '../ground/gradeLine.ts';
import type { Run } from '../layout.ts';
import { fencesOn } from './fencesOn.ts';
import type { SeatedRow } from './withPulls.ts';

/** A run as it is measured: along the grade where the ground is known. */
export const runOf = ({ seated, row, under }: SeatedRow): Run => {
  const { course } = seated;
  const grade = under?.grade ?? null;
  const along = (at: Inches): Inches => (grade === null ? at : slopeAt(grade, at));
  const posts =
    grade === null
      ? row.posts
      : row.posts.map(({ post, station }) => ({ post, station: along(station) }));
  return {
    id: `run:${course.key}`,
    line: course.chain.id,
    legs: course.legs.map(({ id }) => id),
    start: course.from.at,
    end: course.to.at,
    length: along(course.length),
    bearing: course.legs[0]?.bearing ?? radians(0),
    bow: course.bow,
    posts,
    spaces:
      grade === null
        ? row.spaces
        : row.spaces.map((space, n) => ({
            ...space,
            length: inches((posts[n + 1]?.station ?? 0) - (posts[n]?.station ?? 0)),
          })),
    wall: course.wall,
    ground: under === null ? null : { ...under, fences: fencesOn(seated, row, under) },
  };
};
