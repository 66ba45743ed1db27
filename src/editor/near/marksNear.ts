import { boundsOf } from '../../geometry/bounds.ts';
import type { Site } from '../../site/site.ts';
import { standableMarks } from '../standableMarks.ts';
import { nearOf } from './nearOf.ts';

/** The marks about a place that fence can stand at: all within reach, and some beyond. */
export const marksNear = nearOf(
  (site: Site) => standableMarks(site),
  ({ point }) => boundsOf([point]),
);
