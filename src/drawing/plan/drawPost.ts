import { isTerminal, type Post } from '../../engine/post.ts';
import type { Primitive } from '../primitive.ts';

/** Least radii on paper, so that a post shows at any scale; paper inches. */
const least = {
  terminal: { hole: 0.062, post: 0.034 },
  line: { hole: 0.044, post: 0.02 },
} as const;

/** A post as the hole it will be: the hole at its size, the pipe filled in it. */
export const drawPost = (post: Post): readonly Primitive[] => {
  const { hole, post: pipe } = isTerminal(post) ? least.terminal : least.line;
  const { at: centre, od } = post;
  const radius = post.hole.diameter / 2;
  return [
    { kind: 'circle', centre, radius, least: hole, pen: 'thin', ink: 'paper' },
    { kind: 'circle', centre, radius: od / 2, least: pipe, pen: null, ink: 'post' },
  ];
};
