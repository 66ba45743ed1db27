import { distance } from '../../geometry/distance.ts';
import { dot } from '../../geometry/dot.ts';
import { lerp } from '../../geometry/lerp.ts';
import { cornersAt } from '../../geometry/located.ts';
import { moved } from '../../geometry/moved.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Segment } from '../../geometry/segment.ts';
import { subtract } from '../../geometry/subtract.ts';
import { slack } from '../../geometry/tolerance.ts';
import { trianglesNear } from '../../geometry/triangleGrid.ts';
import type { Inches } from '../../units/inches.ts';
import { radians, type Radians } from '../../units/radians.ts';
import type { Ground } from './groundOf.ts';
import { lowestOf, unknownParts, type LeafClearance, type Passed } from './leafClearance.ts';
import type { ProfileStation } from './profile.ts';
import { profileAlong } from './profileAlong.ts';

/** A leaf that turns about a pin, as it is laid out. Lengths in inches. */
export interface TurningLeaf {
  readonly hinge: SitePoint;
  /** The direction from pin to tip when closed, and how far it turns, to the left above 0. */
  readonly closed: Radians;
  readonly turns: Radians;
  /** From the pin to the near end of the frame, and from there to its far end. */
  readonly hung: Inches;
  readonly width: Inches;
}

/** The bottom edge of a leaf, inches above the datum; it stays as it is while the leaf turns. */
export interface LeafBottom {
  readonly near: Inches;
  /** The same as `near` for a level leaf. */
  readonly far: Inches;
}

const round = 2 * Math.PI;

/** What the bottom edge passes over: a ring's sector about the pin. */
interface Sector {
  readonly pin: SitePoint;
  readonly near: number;
  readonly far: number;
  readonly passedAt: (at: SitePoint) => Passed | null;
  readonly edgeAt: (turned: number) => readonly [SitePoint, SitePoint];
}

const sectorOf = ({ hinge, closed, turns, hung, width }: TurningLeaf, bottom: LeafBottom) => {
  const [near, far, side, whole] = [hung, hung + width, turns < 0 ? -1 : 1, Math.abs(turns)];
  const way = (turned: number) => radians(closed + side * turned);
  const passedAt = (at: SitePoint): Passed | null => {
    const reach = distance(hinge, at);
    if (reach < near - slack || reach > far + slack) return null;
    if (reach < slack) return { at, bottom: bottom.near, moved: 0 };
    const off = side * (Math.atan2(at.y - hinge.y, at.x - hinge.x) - closed);
    const turned = off - round * Math.floor(off / round);
    // rounding may put what is under the closed leaf a hair behind it
    const over = turned > (whole + round) / 2 ? turned - round : turned;
    const spare = slack / reach;
    if (over < -spare || over > whole + spare) return null;
    const share = width > 0 ? Math.min(1, Math.max(0, (reach - near) / width)) : 0;
    const z = bottom.near + (bottom.far - bottom.near) * share;
    return { at, bottom: z, moved: Math.min(whole, Math.max(0, over)) };
  };
  const edgeAt = (turned: number) =>
    [moved(hinge, way(turned), near), moved(hinge, way(turned), far)] as const;
  return { pin: hinge, near, far, passedAt, edgeAt } satisfies Sector;
};

/** Where a circle about the pin crosses an edge. */
const onCircle = (pin: SitePoint, radius: number, { start, end }: Segment<'site'>): SitePoint[] => {
  const [way, out] = [subtract(end, start), subtract(start, pin)];
  const [a, b, c] = [dot(way, way), dot(out, way), dot(out, out) - radius ** 2];
  const root = b * b - a * c;
  if (a === 0 || root < 0) return [];
  return [-1, 1]
    .map((sign) => (-b + sign * Math.sqrt(root)) / a)
    .filter((share) => share >= 0 && share <= 1)
    .map((share) => lerp(start, end, share));
};

/**
 * Where on an edge a leaf that rises to its tip comes nearest to it: the ground rises along the
 * edge by `grade` and the leaf, with its distance from the pin, by `rise`.
 */
const touching = (
  pin: SitePoint,
  { start, end }: Segment<'site'>,
  grade: number,
  rise: number,
): SitePoint[] => {
  if (rise <= Math.abs(grade)) return [];
  const [way, length] = [subtract(end, start), distance(start, end)];
  const foot = dot(subtract(pin, start), way) / length ** 2;
  const off = distance(pin, lerp(start, end, foot));
  const share = foot + (off * grade) / Math.sqrt(rise ** 2 - grade ** 2) / length;
  return share > 0 && share < 1 ? [lerp(start, end, share)] : [];
};

/** The direction in which the ground of a triangle rises; null for level ground. */
const uphill = (corners: readonly SitePoint[], heights: readonly number[]): Radians | null => {
  const [a, b, c] = corners;
  if (a === undefined || b === undefined || c === undefined) return null;
  const [p, q] = [subtract(b, a), subtract(c, a)];
  const [h, k] = [(heights[1] ?? 0) - (heights[0] ?? 0), (heights[2] ?? 0) - (heights[0] ?? 0)];
  const [x, y] = [h * q.y - k * p.y, k * p.x - h * q.x];
  return x === 0 && y === 0 ? null : radians(Math.atan2(y, x));
};

/** Every place in a triangle and its edges at which the room under the leaf may be least. */
const placesIn = (ground: Ground, sector: Sector, rise: number, triangle: number): SitePoint[] => {
  const { mesh } = ground;
  const { pin, near, far } = sector;
  const corners = cornersAt(mesh, triangle);
  const heights = (mesh.triangles[triangle] ?? []).map((n) => ground.heights[n] ?? NaN);
  const edges = corners.flatMap((start, n): SitePoint[] => {
    const next = (n + 1) % 3;
    const edge = { start, end: corners[next] ?? start };
    const grade = ((heights[next] ?? 0) - (heights[n] ?? 0)) / distance(edge.start, edge.end);
    return [
      ...[near, far].flatMap((radius) => onCircle(pin, radius, edge)),
      ...touching(pin, edge, grade, rise),
    ];
  });
  const up = uphill(corners, heights);
  const arcs = up === null ? [] : [near, far].map((radius) => moved(pin, up, radius));
  return [...corners, ...edges, ...arcs];
};

const stationPlaces = (ground: Ground, ends: readonly [SitePoint, SitePoint]): SitePoint[] => {
  const profile = profileAlong(ground, ends);
  const placeOf = ({ at }: ProfileStation) => lerp(ends[0], ends[1], at / (profile.length || 1));
  return [...ends, ...profile.known.flat().map(placeOf)];
};

/**
 * The least room under a leaf as it turns from closed to open, and where. Exact for the triangles
 * of the ground and a leaf without thickness: over a flat triangle the room is least at its
 * corners, at places of its edges, or on the rim of what the leaf passes over.
 */
export const turnClearance = (
  ground: Ground,
  leaf: TurningLeaf,
  bottom: LeafBottom,
): LeafClearance => {
  const sector = sectorOf(leaf, bottom);
  const { pin, near, far, passedAt, edgeAt } = sector;
  const whole = Math.abs(leaf.turns);
  const rise = leaf.width > 0 ? (bottom.far - bottom.near) / leaf.width : 0;
  const { mesh } = ground;
  const box = { minX: pin.x - far, minY: pin.y - far, maxX: pin.x + far, maxY: pin.y + far };
  const places = [
    ...[0, whole].flatMap((turned) => stationPlaces(ground, edgeAt(turned))),
    ...trianglesNear(mesh.grid, box).flatMap((n) => placesIn(ground, sector, rise, n)),
  ];
  const rim = mesh.rim.flatMap(([a, b]) => {
    const [start, end] = [mesh.points[a], mesh.points[b]];
    if (start === undefined || end === undefined) return [];
    return [start, ...[near, far].flatMap((radius) => onCircle(pin, radius, { start, end }))];
  });
  const changes = rim.flatMap((at) => passedAt(at)?.moved ?? []);
  return {
    lowest: lowestOf(
      ground,
      places.flatMap((at) => passedAt(at) ?? []),
    ),
    unknown: unknownParts(
      changes,
      whole,
      (turned) => profileAlong(ground, edgeAt(turned)).unknown.length === 0,
    ),
  };
};
