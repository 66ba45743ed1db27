import { boundsOf } from '../../geometry/bounds.ts';
import type { Site } from '../../site/site.ts';
import { entriesOf } from '../entriesOf.ts';
import { nearOf } from './nearOf.ts';

/** The grade shots about a place, with their ids: all within reach, and some beyond. */
export const shotsNear = nearOf(
  (shots: Site['shots']) => entriesOf(shots),
  ([, shot]) => boundsOf([shot]),
);
