import { distance } from '../../geometry/distance.ts';
import { dot } from '../../geometry/dot.ts';
import { lerp } from '../../geometry/lerp.ts';
import { moved } from '../../geometry/moved.ts';
import { nearestOnSegment } from '../../geometry/nearestOnSegment.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Segment } from '../../geometry/segment.ts';
import { subtract } from '../../geometry/subtract.ts';
import { radians, type Radians } from '../../units/radians.ts';
import type { LeafLayout } from '../layout.ts';
import type { Obstacle } from './obstacle.ts';

/** How far a leaf has turned when it first touches something, radians from closed, and where. */
export interface Touch {
  readonly turned: Radians;
  readonly at: SitePoint;
}

/**
 * A closed leaf about its pin: it lies from `near` to `far` along x and `half` to either side, and
 * turns to the left.
 */
interface Blade {
  readonly near: number;
  readonly far: number;
  readonly half: number;
}

/** Angles are told apart to a billionth: rounding, not a gap. */
const hair = 1e-9;
const round = 2 * Math.PI;

const inTurn = (angle: number): number => {
  const turned = angle - round * Math.floor(angle / round);
  return turned > round - hair ? 0 : turned;
};

const cornersOf = ({ near, far, half }: Blade): SitePoint[] => [
  { x: far, y: half },
  { x: near, y: half },
  { x: near, y: -half },
  { x: far, y: -half },
];

const edgesOf = (blade: Blade): Segment<'site'>[] => {
  const corners = cornersOf(blade);
  return corners.map((start, n) => ({ start, end: corners[(n + 1) % corners.length] ?? start }));
};

const angleOf = ({ x, y }: SitePoint): number => Math.atan2(y, x);

/** The angle of the blade's foremost point at a distance from the pin; null where it has none. */
const foremost = ({ near, far, half }: Blade, reach: number): number | null => {
  if (reach < near || reach > Math.hypot(far, half)) return null;
  return reach <= Math.hypot(near, half) ? Math.acos(near / reach) : Math.asin(half / reach);
};

/** Where a circle about the pin crosses a segment. */
const crossings = ({ start, end }: Segment<'site'>, radius: number): SitePoint[] => {
  const way = subtract(end, start);
  const [a, b, c] = [dot(way, way), dot(start, way), dot(start, start) - radius ** 2];
  const root = b * b - a * c;
  if (a === 0 || root < 0) return [];
  return [-1, 1]
    .map((sign) => (-b + sign * Math.sqrt(root)) / a)
    .filter((share) => share >= 0 && share <= 1)
    .map((share) => lerp(start, end, share));
};

/** A point of a segment that lies on the closed blade, where clipped to it something is left. */
const underBlade = (
  { near, far, half }: Blade,
  { start, end }: Segment<'site'>,
): SitePoint | null => {
  let [from, to] = [0, 1];
  for (const [at, way, low, high] of [
    [start.x, end.x - start.x, near, far],
    [start.y, end.y - start.y, -half, half],
  ] as const) {
    if (way === 0 && (at < low || at > high)) return null;
    if (way === 0) continue;
    const [one, other] = [(low - at) / way, (high - at) / way];
    from = Math.max(from, Math.min(one, other));
    to = Math.min(to, Math.max(one, other));
  }
  return from <= to ? lerp(start, end, from) : null;
};

interface Contact {
  readonly turned: number;
  /** In the frame of the closed blade. */
  readonly at: SitePoint;
}

/** Every turn at which a corner of the one lies on the other: the first touch is among them. */
const edgeContacts = (blade: Blade, edge: Segment<'site'>): Contact[] => {
  const under = underBlade(blade, edge);
  if (under !== null) return [{ turned: 0, at: under }];
  const ends = [edge.start, edge.end].flatMap((at) => {
    const own = foremost(blade, Math.hypot(at.x, at.y));
    return own === null ? [] : [{ turned: inTurn(angleOf(at) - own), at }];
  });
  const swept = cornersOf(blade).flatMap((corner) =>
    crossings(edge, Math.hypot(corner.x, corner.y)).map((at) => ({
      turned: inTurn(angleOf(at) - angleOf(corner)),
      at,
    })),
  );
  return [...ends, ...swept];
};

/** Every turn at which a disc is just touched by an edge or a corner of the blade. */
const discContacts = (blade: Blade, centre: SitePoint, radius: number): Contact[] => {
  const off = (at: SitePoint): number =>
    Math.min(...edgesOf(blade).map((edge) => nearestOnSegment(at, edge).distance));
  const inside =
    centre.x >= blade.near && centre.x <= blade.far && Math.abs(centre.y) <= blade.half;
  if (inside || off(centre) <= radius) return [{ turned: 0, at: centre }];
  const [away, own] = [Math.hypot(centre.x, centre.y), angleOf(centre)];
  const across = blade.half + radius;
  const flat = away > across ? [Math.asin(across / away)] : [];
  const butted = [blade.near - radius, blade.far + radius]
    .filter((along) => Math.abs(along) < away)
    .flatMap((along) => [Math.acos(along / away), -Math.acos(along / away)]);
  const rounded = cornersOf(blade).flatMap((corner) => {
    const reach = Math.hypot(corner.x, corner.y);
    const cosine = (away ** 2 + reach ** 2 - radius ** 2) / (2 * away * reach);
    if (!(Math.abs(cosine) <= 1)) return [];
    return [angleOf(corner) + Math.acos(cosine), angleOf(corner) - Math.acos(cosine)];
  });
  // of these the true ones put the disc's middle just its radius off the blade
  return [...flat, ...butted, ...rounded]
    .filter((angle) => {
      const at = { x: away * Math.cos(angle), y: away * Math.sin(angle) };
      return Math.abs(off(at) - radius) < 1e-6 * (1 + away);
    })
    .map((angle) => ({ turned: inTurn(own - angle), at: centre }));
};

/** Between the ground and the frame of a closed leaf that turns to the left. */
const framed = ({ hinge, closed, turns }: LeafLayout) => {
  const [cos, sin] = [Math.cos(closed), Math.sin(closed)];
  const side = turns < 0 ? -1 : 1;
  return {
    onto: (at: SitePoint): SitePoint => {
      const { x, y } = subtract(at, hinge);
      return { x: x * cos + y * sin, y: side * (y * cos - x * sin) };
    },
    back: ({ x, y }: SitePoint): SitePoint =>
      moved(hinge, radians(closed + side * Math.atan2(y, x)), Math.hypot(x, y)),
  };
};

/** How far from its pin a leaf reaches, inches. */
export const reachOf = ({ hung, width, thickness }: LeafLayout): number =>
  Math.hypot(hung + width, thickness / 2);

/**
 * Where a leaf first touches an obstacle as it turns from closed by its `turns`, as the flat piece
 * that it is; null where it passes. A turn of 0 means that it touches while it is closed. Of what
 * it touches at one turn the place is any.
 */
export const firstTouch = (leaf: LeafLayout, { edges, disc }: Obstacle): Touch | null => {
  const blade = { near: leaf.hung, far: leaf.hung + leaf.width, half: leaf.thickness / 2 };
  const { onto, back } = framed(leaf);
  const reach = reachOf(leaf);
  const near = edges.filter((edge) => nearestOnSegment(leaf.hinge, edge).distance <= reach);
  const contacts = [
    ...near.flatMap(({ start, end }) =>
      edgeContacts(blade, { start: onto(start), end: onto(end) }),
    ),
    ...(disc === null || distance(disc.centre, leaf.hinge) > reach + disc.radius
      ? []
      : discContacts(blade, onto(disc.centre), disc.radius)),
  ].filter(({ turned }) => turned <= Math.abs(leaf.turns) + hair);
  const first = contacts.reduce<Contact | null>(
    (least, one) => (least === null || one.turned < least.turned ? one : least),
    null,
  );
  return first === null ? null : { turned: radians(first.turned), at: back(first.at) };
};
