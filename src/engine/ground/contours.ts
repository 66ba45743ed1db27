import { lerp } from '../../geometry/lerp.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Triangle } from '../../geometry/triangulated.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Contour } from './contour.ts';
import type { Ground } from './groundOf.ts';

/** An edge of the triangles by its two shots, the lower index first, and where a level crosses it. */
interface Cut {
  readonly edge: string;
  readonly at: SitePoint;
}

/** The piece of a level in one triangle, the higher ground on its left. */
interface Reach {
  readonly from: Cut;
  readonly to: Cut;
}

const cutOf = ({ mesh, heights }: Ground, ends: readonly number[], level: number): Cut => {
  // told alike from either of its triangles
  const [i = 0, j = 0] = ends.toSorted((a, b) => a - b);
  const [a, b] = [mesh.points[i] ?? { x: NaN, y: NaN }, mesh.points[j] ?? { x: NaN, y: NaN }];
  const [low, high] = [heights[i] ?? NaN, heights[j] ?? NaN];
  return { edge: `${i} ${j}`, at: lerp(a, b, (level - low) / (high - low)) };
};

/** A corner on the level counts as above it, so that a level has one piece in a triangle or none. */
const reachIn = (ground: Ground, triangle: Triangle, level: number): Reach | null => {
  const isAbove = triangle.map((n) => (ground.heights[n] ?? NaN) >= level);
  const down = isAbove.findIndex((above, n) => above && isAbove[(n + 1) % 3] === false);
  const up = isAbove.findIndex((above, n) => !above && isAbove[(n + 1) % 3] === true);
  if (down < 0 || up < 0) return null;
  const edge = (n: number) => [triangle[n] ?? 0, triangle[(n + 1) % 3] ?? 0];
  return { from: cutOf(ground, edge(down), level), to: cutOf(ground, edge(up), level) };
};

const withoutRepeats = (points: readonly SitePoint[]): SitePoint[] =>
  points.filter(({ x, y }, n) => n === 0 || x !== points[n - 1]?.x || y !== points[n - 1]?.y);

const chained = (reaches: readonly Reach[], z: Inches): Contour[] => {
  const open = new Map(reaches.map((reach) => [reach.from.edge, reach]));
  const ends = new Set(reaches.map(({ to }) => to.edge));
  const inner = reaches.filter(({ from }) => ends.has(from.edge));
  const starts = [...reaches.filter(({ from }) => !ends.has(from.edge)), ...inner];
  return starts.flatMap(({ from }): Contour[] => {
    const points = [from.at];
    let edge = from.edge;
    for (let next = open.get(edge); next !== undefined; next = open.get(edge)) {
      open.delete(edge);
      points.push(next.to.at);
      edge = next.to.edge;
    }
    const closed = points.length > 1 && edge === from.edge;
    const line = withoutRepeats(closed ? points.slice(1) : points);
    return line.length < (closed ? 3 : 2) ? [] : [{ z, points: line, closed }];
  });
};

/** More lines than this are a slip of the pen, not a drawing. */
const mostLevels = 1000;

/**
 * The contour lines of the ground at every whole multiple of an interval (inches, above 0), rising:
 * exact crossings with the triangles' edges, joined to lines that end at the rim or close. Flat
 * ground at a level has its line where it falls away.
 * @throws RangeError for an interval of 0 or less, or one that would give more than 1,000 levels.
 */
export const contours = (ground: Ground, interval: Inches): Contour[] => {
  const { mesh, heights } = ground;
  const shown = mesh.triangles.flat().map((n) => heights[n] ?? NaN);
  const [low, high] = [Math.min(...shown), Math.max(...shown)];
  if (shown.length === 0) return [];
  if (!(interval > 0) || (high - low) / interval > mostLevels) {
    throw new RangeError(
      `contour interval ${interval} in: expected above 0 and at least ${(high - low) / mostLevels}`,
    );
  }
  const [first, last] = [Math.ceil(low / interval), Math.floor(high / interval)];
  return Array.from({ length: last - first + 1 }, (_, n) => inches((first + n) * interval)).flatMap(
    (level) =>
      chained(
        mesh.triangles.flatMap((one) => reachIn(ground, one, level) ?? []),
        level,
      ),
  );
};
