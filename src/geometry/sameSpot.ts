import { distance } from './distance.ts';
import { spot } from './tolerance.ts';
import type { SitePoint } from './point.ts';

/** Whether two points on the ground are nearer than 1/64 in: one place for a lath. */
export const sameSpot = (a: SitePoint, b: SitePoint): boolean => distance(a, b) < spot;
