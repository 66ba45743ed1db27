import { isTerminal, type Post } from '../../engine/post.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { radians } from '../../units/radians.ts';
import type { Primitive } from '../primitive.ts';

/** Where numbers crowd, rounder ones stay. */
const steps = [100, 20, 10, 2] as const;

/** The way to the next tag that is as round as this one, where `next` leads to the next post. */
const toAsRound = (tag: string, { x, y }: SitePoint): SitePoint => {
  const step = steps.find((size) => Number(tag) % size === 0) ?? 1;
  return { x: x * step, y: y * step };
};

/**
 * What the sheets call a post, beside it: up for a positive side, else down. `next` is the way to
 * its neighbour, inches on the ground: line posts too near one another for their numbers keep only
 * the round ones.
 */
export const drawTag = (post: Post, side: 1 | -1, next: SitePoint | undefined): Primitive => {
  const where = { kind: 'text', at: post.at, text: post.tag, rise: side * 0.075 } as const;
  const angle = radians(0);
  if (isTerminal(post)) return { ...where, angle, size: 0.16, ink: 'text', weight: 'bold' };
  return {
    ...where,
    angle,
    size: 0.135,
    ink: 'dimension',
    weight: 'regular',
    far: 'leave out',
    ...(next === undefined ? {} : { apart: toAsRound(post.tag, next) }),
  };
};
