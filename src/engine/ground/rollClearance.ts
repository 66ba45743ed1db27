import { contains } from '../../geometry/contains.ts';
import { cross } from '../../geometry/cross.ts';
import { distance } from '../../geometry/distance.ts';
import { dot } from '../../geometry/dot.ts';
import { lerp } from '../../geometry/lerp.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Segment } from '../../geometry/segment.ts';
import { subtract } from '../../geometry/subtract.ts';
import { slack } from '../../geometry/tolerance.ts';
import type { Inches } from '../../units/inches.ts';
import type { Ground } from './groundOf.ts';
import { lowestOf, unknownParts, type LeafClearance, type Passed } from './leafClearance.ts';
import { profileAlong } from './profileAlong.ts';

/** A leaf that rolls aside without turning: the same piece where it is closed and where stored. */
export interface RollingLeaf {
  readonly closed: Segment<'site'>;
  readonly stored: Segment<'site'>;
}

type Ends = readonly [SitePoint, SitePoint];

const edgeWhen = ({ closed, stored }: RollingLeaf, share: number): Ends => [
  lerp(closed.start, stored.start, share),
  lerp(closed.end, stored.end, share),
];

/** How far a leaf has rolled, as a share of the whole, when it first lies over a place. */
const firstOver = ({ closed, stored }: RollingLeaf, at: SitePoint): number => {
  const [way, leaf] = [subtract(stored.start, closed.start), subtract(closed.end, closed.start)];
  const out = subtract(at, closed.start);
  const area = cross(way, leaf);
  const [long, reach] = [dot(way, way), Math.sqrt(dot(leaf, leaf))];
  if (long === 0) return 0;
  // along its own length: over the place as soon as its leading end is
  const inLine = (dot(out, way) - Math.max(0, dot(leaf, way))) / long;
  const share = Math.abs(area) > slack * (reach + 1) ? cross(out, leaf) / area : inLine;
  return Math.min(1, Math.max(0, share));
};

/** The stations of the ground along a way, as places, with the ends of what is not known. */
const placesAlong = (ground: Ground, [start, end]: Ends): SitePoint[] => {
  const { length, known, unknown } = profileAlong(ground, [start, end]);
  const stations = [0, length, ...known.flat().map(({ at }) => at)];
  const ends = unknown.flatMap(({ from, to }) => [from, to]);
  return [...stations, ...ends].map((at) => lerp(start, end, at / (length || 1)));
};

/**
 * The least room under a level leaf, its bottom so high above the datum, as it rolls from closed to
 * stored, and where. Exact for the triangles of the ground and a leaf without thickness. `moved`
 * counts inches from closed.
 */
export const rollClearance = (ground: Ground, leaf: RollingLeaf, bottom: Inches): LeafClearance => {
  const { mesh } = ground;
  const { closed, stored } = leaf;
  const whole = distance(closed.start, stored.start);
  const ring = [closed.start, closed.end, stored.end, stored.start];
  const paths: readonly Ends[] = [
    [closed.start, stored.start],
    [closed.end, stored.end],
  ];
  const sides: readonly Ends[] = [...paths, edgeWhen(leaf, 0), edgeWhen(leaf, 1)];
  const shots = [...new Set(mesh.triangles.flat())].flatMap((n) => mesh.points[n] ?? []);
  const inside = shots.filter((at) => contains(ring, at));
  const places = [...sides.flatMap((side) => placesAlong(ground, side)), ...inside];
  const passed = places.map((at): Passed => ({ at, bottom, moved: whole * firstOver(leaf, at) }));
  // either end may pass from known ground to unknown, or the leaf over a corner of the rim
  const ends = paths.flatMap((path) =>
    placesAlong(ground, path).map((at) => distance(path[0], at)),
  );
  return {
    lowest: lowestOf(ground, passed),
    unknown: unknownParts(
      [...ends, ...inside.map((at) => whole * firstOver(leaf, at))],
      whole,
      (rolled) => profileAlong(ground, edgeWhen(leaf, rolled / (whole || 1))).unknown.length === 0,
    ),
  };
};
