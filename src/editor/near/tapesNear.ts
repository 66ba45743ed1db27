import { lyingTapes } from '../../engine/survey/lyingTapes.ts';
import { boundsOf } from '../../geometry/bounds.ts';
import type { Site } from '../../site/site.ts';
import { nearOf } from './nearOf.ts';

/** The tapes about a place that lie across open ground: all within reach, and some beyond. */
export const tapesNear = nearOf(
  (site: Site) =>
    // most yards have none, and then no leg has to be looked at for what lies along it
    Object.keys(site.observations).length === 0
      ? []
      : lyingTapes(site).filter(({ along }) => !along),
  ({ start, end }) => boundsOf([start, end]),
);
