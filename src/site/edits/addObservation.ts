import { nextId } from '../nextId.ts';
import type { Observation } from '../observation.ts';
import type { Site } from '../site.ts';
import { withObservation } from '../withObservation.ts';

/**
 * Adds what was observed, under `nextId(site, 'observation')`. RangeError with one line for marks
 * that are not there, one mark named twice, a length of zero or less, an angle out of its range.
 */
export const addObservation = (site: Site, seen: Observation): Site =>
  withObservation(site, nextId(site, 'observation'), seen);
