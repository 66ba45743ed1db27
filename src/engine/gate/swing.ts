import { moved } from '../../geometry/moved.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { principalAngle } from '../../geometry/principalAngle.ts';
import type { Gate } from '../../site/gate.ts';
import { leafWidth } from '../../site/leafWidth.ts';
import type { Inches } from '../../units/inches.ts';
import { radians, type Radians } from '../../units/radians.ts';
import type { LeafLayout } from '../layout.ts';
import type { Opening } from '../opening.ts';
import { leavesOf } from './termsOf.ts';

/** The inside faces of a gate's two posts and the direction from the first to the second. */
export interface Doorway {
  readonly start: SitePoint;
  readonly end: SitePoint;
  readonly bearing: Radians;
}

/**
 * Each leaf with the corner of its frame about which it turns, one hinge allowance in from the
 * face of its post; it turns a quarter to the left or right of the leg's direction.
 */
export const leafLayouts = (gate: Gate, opening: Opening, doorway: Doorway): LeafLayout[] => {
  const hinges = opening.terms.filter(({ role }) => role === 'hinge');
  const leaves = leavesOf(gate);
  const quarter = gate.opens === 'left' ? Math.PI / 2 : -Math.PI / 2;
  return leaves.map((leaf, n) => {
    const width = leafWidth(leaf);
    const atStart = leaves.length === 1 ? gate.hingedAt === 'start' : n === 0;
    const hung: Inches | undefined = hinges[n]?.planned;
    const closed = atStart ? doorway.bearing : principalAngle(doorway.bearing + Math.PI);
    const face = atStart ? doorway.start : doorway.end;
    return {
      id: leaf.id,
      width,
      hinge: moved(face, closed, hung ?? 0),
      closed: radians(closed),
      open: principalAngle(doorway.bearing + quarter),
    };
  });
};
