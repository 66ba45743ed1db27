import { isTerminal, type Post } from '../../engine/post.ts';
import { radians } from '../../units/radians.ts';
import type { Primitive } from '../primitive.ts';

/** What the sheets call a post, beside it: up for a positive side, else down. Line posts may stay bare. */
export const drawTag = (post: Post, side: 1 | -1): Primitive => {
  const terminal = isTerminal(post);
  return {
    kind: 'text',
    at: post.at,
    text: post.tag,
    size: terminal ? 0.16 : 0.135,
    rise: side * 0.075,
    angle: radians(0),
    ink: terminal ? 'text' : 'dimension',
    weight: terminal ? 'bold' : 'regular',
    ...(terminal ? {} : { far: 'leave out' }),
  };
};
