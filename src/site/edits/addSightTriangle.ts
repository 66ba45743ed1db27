import type { Feature } from '../feature.ts';
import { sightCorner, type CornerOf } from '../sightCorner.ts';
import type { Site } from '../site.ts';
import { addFeature } from './addFeature.ts';

type Limits = Pick<Extract<Feature, { kind: 'height zone' }>, 'solid' | 'open'>;

/**
 * Adds a sight triangle with limits of height (inches) under `nextId(site, 'feature')`, from a corner of a
 * boundary or of paving along both its sides; its corner is that mark, and goes with it. RangeError where
 * there is no such corner.
 */
export const addSightTriangle = (site: Site, corner: CornerOf, limits: Limits): Site =>
  addFeature(
    site,
    { kind: 'height zone', label: '', of: 'sight triangle', ...limits },
    sightCorner(site, corner).places,
  );
