import { boundsOf, expandBounds, type Bounds } from '../../geometry/bounds.ts';
import type { Site } from '../../site/site.ts';
import { edgesOf, type Edge } from '../edges.ts';
import { nearOf } from './nearOf.ts';

/** No place of an arc is farther from its chord than twice its bow: past the ends too, where it is over half a circle. */
const boundsOfEdge = ({ start, end, bow }: Edge): Bounds | null => {
  const chord = boundsOf([start, end]);
  return chord === null ? null : expandBounds(chord, 2 * Math.abs(bow));
};

/** The legs and sides about a place, legs first: all within reach, and some beyond. */
export const edgesNear = nearOf((site: Site) => edgesOf(site), boundsOfEdge);
