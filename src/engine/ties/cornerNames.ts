import { boundsOf } from '../../geometry/bounds.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { signedArea } from '../../geometry/signedArea.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Counter-clockwise from east, an eighth of a turn apart. */
const compass = ['E', 'NE', 'N', 'NW', 'W', 'SW', 'S', 'SE'] as const;

const octantOf = ({ x, y }: SitePoint): number =>
  (Math.round(Math.atan2(y, x) / (Math.PI / 4)) + compass.length) % compass.length;

/** How far out a place lies the way of an octant. */
const outward = ({ x, y }: SitePoint, octant: number): number => {
  const angle = (octant * Math.PI) / 4;
  return x * Math.cos(angle) + y * Math.sin(angle);
};

/** Places in their box, which reaches from -1 to 1 both ways: a long house has corners as a square one. */
const inBox = (points: readonly SitePoint[]): SitePoint[] => {
  const box = boundsOf(points);
  if (box === null) return [];
  const [wide, high] = [(box.maxX - box.minX) / 2 || 1, (box.maxY - box.minY) / 2 || 1];
  return points.map(({ x, y }) => ({
    x: (x - box.minX) / wide - 1,
    y: (y - box.minY) / high - 1,
  }));
};

/** The compass word of every place that lies farthest out its way; null for the others. */
const outermost = (points: readonly SitePoint[]): (string | null)[] => {
  const boxed = inBox(points);
  const octants = boxed.map(octantOf);
  return boxed.map((place, n) => {
    const own = octants[n] ?? 0;
    const most = boxed.reduce((best, other, m) => {
      const held = boxed[best] ?? place;
      return octants[m] === own && outward(other, own) > outward(held, own) + 1e-9 ? m : best;
    }, octants.indexOf(own));
    return most === n ? (compass[own] ?? null) : null;
  });
};

/** A corner between two that have compass words, counted on from the one before it. */
const counted = (words: readonly (string | null)[], n: number, way: string): string => {
  const { length } = words;
  const back = words.findIndex((_, k) => words[(n - 1 - k + 2 * length) % length] !== null);
  const from = words[(n - 1 - back + 2 * length) % length] ?? '';
  return back === 0
    ? phrase`next corner ${way} from ${from}`
    : phrase`corner ${back + 1} ${way} from ${from}`;
};

/**
 * What the corners of a closed outline are called, in their order: the one farthest out to the
 * northwest `NW corner`, and so on; what lies between two such is counted on from the one before,
 * `next corner clockwise from NW`. North is up the y axis.
 */
export const cornerNames = (points: readonly SitePoint[]): string[] => {
  const words = outermost(points);
  const clockwise = signedArea(points) < 0;
  return words.map((word, n) => {
    if (word !== null) return phrase`${word} corner`;
    if (clockwise) return counted(words, n, phrase`clockwise`);
    return counted(words.toReversed(), words.length - 1 - n, phrase`clockwise`);
  });
};

/** What the marks of an open line are called: `W end`, `E end`, and those between from the first. */
export const endNames = (points: readonly SitePoint[]): string[] => {
  const [first, last] = [points.at(0), points.at(-1)];
  if (first === undefined || last === undefined) return [];
  const way = octantOf({ x: last.x - first.x, y: last.y - first.y });
  const there = compass[way] ?? '';
  const here = compass[(way + 4) % 8] ?? '';
  return points.map((_, n) => {
    if (n === 0) return phrase`${here} end`;
    return n === points.length - 1 ? phrase`${there} end` : phrase`mark ${n} from the ${here} end`;
  });
};
