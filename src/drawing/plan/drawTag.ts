import { isTerminal, type Post } from '../../engine/post.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { radians } from '../../units/radians.ts';
import type { Beside, Primitive } from '../primitive.ts';

/** Where numbers crowd, rounder ones stay. */
const steps = [100, 20, 10, 2] as const;

/** The way to the next tag that is as round as this one, where `next` leads to the next post. */
const toAsRound = (tag: string, { x, y }: SitePoint): SitePoint => {
  const step = steps.find((size) => Number(tag) % size === 0) ?? 1;
  return { x: x * step, y: y * step };
};

/** What the sheets call a post that stands beside the fence for a gate: close by, or left out. */
export const drawStandTag = ({ at, tag }: Post): Primitive => ({
  kind: 'text',
  at,
  text: tag,
  size: 0.141,
  rise: 0.06,
  angle: radians(0),
  ink: 'dimension',
  weight: 'regular',
});

const hair = 1e-6;

/**
 * What the sheets call a post, beside it. `side` is the side of its run that the chain leaves free:
 * numbers of line posts stand there in a row, letters stand up or down on the sheet. `next` is the way to its neighbour, inches on the ground: line posts too near one another
 * for their numbers keep only the round ones.
 */
export const drawTag = (post: Post, side: Beside, next: SitePoint | undefined): Primitive => {
  // beside an upright fence the last bits must not decide
  const rise = side.way.y > hair ? 0.075 : -0.075;
  const [{ at, tag: text }, angle] = [post, radians(0)];
  if (isTerminal(post))
    return { kind: 'text', at, text, rise, angle, size: 0.16, ink: 'text', weight: 'bold' };
  // written out: there are thousands of them
  return {
    kind: 'text',
    at,
    text,
    rise,
    angle,
    size: 0.141,
    ink: 'dimension',
    weight: 'regular',
    far: 'leave out',
    beside: side,
    ...(next === undefined ? {} : { apart: toAsRound(post.tag, next) }),
  };
};
