import { moved } from '../../geometry/moved.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { principalAngle } from '../../geometry/principalAngle.ts';
import type { Gate } from '../../site/gate.ts';
import { leafWidth } from '../../site/leafWidth.ts';
import type { Site } from '../../site/site.ts';
import { inches } from '../../units/inches.ts';
import { radians, type Radians } from '../../units/radians.ts';
import type { LeafLayout } from '../layout.ts';
import type { Opening } from '../opening.ts';
import { leafThickness } from './leafThickness.ts';
import { leavesOf } from './termsOf.ts';

/** The inside faces of a gate's two posts and the direction from the first to the second. */
export interface Doorway {
  readonly start: SitePoint;
  readonly end: SitePoint;
  readonly bearing: Radians;
}

/** Where the pin of a leaf's hinges is, inches from the face of its post, and who says so. */
const pinOf = (said: number | null, taken: number): { pin: number; from: LeafLayout['pin'] } =>
  // a pin past the frame that hangs on it is a slip of the pen
  said === null
    ? { pin: taken / 2, from: 'assumed' }
    : { pin: Math.min(said, taken), from: 'said' };

/**
 * Each leaf that turns, with the pin it turns about: as far from the face of its post as its hinge
 * says, else half of what the hinge is planned to take up. It turns by what the gate's way says,
 * to the left or right of the leg's direction. None for a gate that does not turn.
 */
export const leafLayouts = (
  site: Site,
  gate: Gate,
  opening: Opening,
  doorway: Doorway,
): LeafLayout[] => {
  const { way } = gate;
  if (way.kind !== 'swing' && way.kind !== 'centre stop') return [];
  const hinges = opening.terms.filter(({ role }) => role === 'hinge');
  const leaves = leavesOf(gate);
  return leaves.map((leaf, n) => {
    const atStart = leaves.length === 1 ? gate.hingedAt === 'start' : n === 0;
    const taken = hinges[n]?.planned ?? 0;
    const said = leaf.hinge === null ? null : (site.hardware[leaf.hinge]?.pin ?? null);
    const { pin, from } = pinOf(said, taken);
    const closed = atStart ? doorway.bearing : principalAngle(doorway.bearing + Math.PI);
    const turns = radians((gate.opens === 'left') === atStart ? way.turns : 0 - way.turns);
    return {
      id: leaf.id,
      width: leafWidth(leaf),
      hinge: moved(atStart ? doorway.start : doorway.end, closed, pin),
      pin: from,
      hung: inches(taken - pin),
      thickness: leafThickness(leaf),
      closed: radians(closed),
      turns,
      open: principalAngle(closed + turns),
    };
  });
};

/** The middle of a leaf's free end when it has turned by an angle, radians as `turns`. */
export const leafTip = (leaf: LeafLayout, turned: Radians): SitePoint =>
  moved(leaf.hinge, radians(leaf.closed + turned), leaf.hung + leaf.width);
