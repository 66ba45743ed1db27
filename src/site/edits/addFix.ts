import type { SitePoint } from '../../geometry/point.ts';
import type { Inches } from '../../units/inches.ts';
import { nextId } from '../nextId.ts';
import type { Origin } from '../origin.ts';
import type { Site } from '../site.ts';
import { addMark } from './addMark.ts';
import { addObservation } from './addObservation.ts';
import { setOrigin } from './setOrigin.ts';

/** A place that satellites found: inches on the site with their standard deviation, and what it is called. */
export interface FoundPlace {
  readonly at: SitePoint;
  readonly accuracy: Inches;
  readonly label: string;
  /** Where on earth 0, 0 is by this; taken where the site does not say yet. */
  readonly origin: Origin;
}

/**
 * Adds a mark where satellites found a place, under `nextId(site, 'mark')`, with what they found of it.
 * RangeError beyond ten miles, for an accuracy of zero or less, and for a place that is none.
 */
export const addFix = (site: Site, { at, accuracy, label, origin }: FoundPlace): Site => {
  const placed = site.origin === null ? setOrigin(site, origin) : site;
  const mark = nextId(placed, 'mark');
  const { x, y } = at;
  return addObservation(addMark(placed, at, label), {
    kind: 'fix',
    mark,
    x,
    y,
    accuracy,
    label: '',
  });
};
