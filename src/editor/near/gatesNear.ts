import { boundsOf } from '../../geometry/bounds.ts';
import type { Layout } from '../../engine/layout.ts';
import { entriesOf } from '../entriesOf.ts';
import { nearOf } from './nearOf.ts';

/** The gates of a layout about a place, with their ids: all within reach, and some beyond. */
export const gatesNear = nearOf(
  (gates: Layout['gates']) => entriesOf(gates),
  ([, { start, end }]) => boundsOf([start, end]),
);
