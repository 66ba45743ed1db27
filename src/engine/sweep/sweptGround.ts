import { moved } from '../../geometry/moved.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { radians } from '../../units/radians.ts';
import type { LeafLayout } from '../layout.ts';
import { reachOf } from './firstTouch.ts';

/** The arc is drawn in steps of 5 degrees at most: over 20 ft that is 1/4 in off. */
const step = Math.PI / 36;

/**
 * The outline of the ground that a leaf passes over as it turns from closed to open: its pin, then
 * points on the arc of its free end.
 */
export const sweptGround = (leaf: LeafLayout): readonly SitePoint[] => {
  const count = Math.max(1, Math.ceil(Math.abs(leaf.turns) / step));
  const reach = reachOf(leaf);
  const arc = Array.from({ length: count + 1 }, (_, n) =>
    moved(leaf.hinge, radians(leaf.closed + (leaf.turns * n) / count), reach),
  );
  return [leaf.hinge, ...arc];
};
