import type { Layout } from '../../engine/layout.ts';
import type { Site } from '../../site/site.ts';
import type { Primitive } from '../primitive.ts';
import { drawFixes } from './drawFixes.ts';
import { drawNamelessMarks } from './drawLoneMarks.ts';
import { drawSurvey } from './drawSurvey.ts';
import { drawPlan, type PlanOptions } from './drawPlan.ts';

/**
 * A name that finds no room near its place waits until the pad is brought closer; flags and the
 * names of gates are led out to clear ground, so that none of them is overlooked.
 */
const nearOnly = (primitive: Primitive): Primitive =>
  primitive.kind !== 'text' || primitive.ink === 'gate' || primitive.ink === 'stop'
    ? primitive
    : { ...primitive, far: 'leave out' };

/**
 * The plan as the pad shows it, where a person can come closer: as `drawPlan`, less crowded, with marks
 * that have no name and how rough places are that satellites found.
 */
export const padPlan = (
  site: Site,
  layout: Layout,
  options: PlanOptions = {},
): readonly Primitive[] =>
  [
    ...drawFixes(site),
    ...drawPlan(site, layout, options),
    ...drawNamelessMarks(site),
    ...drawSurvey(site, layout),
  ].map(nearOnly);
