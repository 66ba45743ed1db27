import { isTerminal, type Post } from '../../engine/post.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Primitive } from '../primitive.ts';

/** Least radii on paper, so that a post shows at any scale; paper inches. */
const least = {
  terminal: { hole: 0.062, post: 0.034 },
  line: { hole: 0.044, post: 0.02 },
} as const;

/**
 * A post as the hole it will be: the hole at its size, the pipe filled in it. `next` is the way to
 * its neighbour, inches on the ground: line posts shrink where they would run into one another.
 */
export const drawPost = (post: Post, next: SitePoint | undefined): readonly Primitive[] => {
  const terminal = isTerminal(post);
  const { hole, post: pipe } = terminal ? least.terminal : least.line;
  const { at: centre, od } = post;
  const radius = post.hole.diameter / 2;
  const room = terminal || next === undefined ? {} : { apart: Math.hypot(next.x, next.y) };
  return [
    { kind: 'circle', centre, radius, least: hole, pen: 'thin', ink: 'paper', ...room },
    { kind: 'circle', centre, radius: od / 2, least: pipe, pen: null, ink: 'post', ...room },
  ];
};
