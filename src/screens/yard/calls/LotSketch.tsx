import { phrase } from '../../../phrases/phrase.ts';
import { boundsOf } from '../../../geometry/bounds.ts';
import type { SitePoint } from '../../../geometry/point.ts';
import { lotPoints } from '../../../engine/calls/lotPoints.ts';
import type { Traverse } from '../../../engine/calls/traverse.ts';

/** The sketch in px of its own, and what is kept free around it. */
const size = { width: 300, height: 220, margin: 24 } as const;

/** More numbers than this only cover the sketch. */
const mostNumbers = 24;

const onto = (points: readonly SitePoint[]): ((at: SitePoint) => SitePoint) => {
  const { minX, minY, maxX, maxY } = boundsOf(points) ?? { minX: 0, minY: 0, maxX: 1, maxY: 1 };
  const [wide, high] = [size.width - 2 * size.margin, size.height - 2 * size.margin];
  const scale = Math.min(wide / Math.max(1, maxX - minX), high / Math.max(1, maxY - minY));
  return ({ x, y }) => ({
    x: size.width / 2 + (x - (minX + maxX) / 2) * scale,
    y: size.height / 2 - (y - (minY + maxY) / 2) * scale,
  });
};

/** The lot as it would be drawn, north up, its courses by their numbers; the dot is where they begin. */
export const LotSketch = ({ told }: { readonly told: Traverse }) => {
  const points = lotPoints(told, '', 6);
  const map = onto(points);
  const placed = points.map(map);
  const corners = points.flatMap(({ is }, n) => (is === 'corner' ? [n] : []));
  const path = placed.map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ');
  const [begin = { x: 0, y: 0 }] = placed;
  const name =
    told.lot === null
      ? phrase`Sketch of the open calls, north up`
      : phrase`Sketch of the lot, north up`;
  return (
    <svg
      className="lot-sketch"
      role="img"
      aria-label={name}
      viewBox={`0 0 ${size.width} ${size.height}`}
    >
      {told.lot === null ? <polyline points={path} /> : <polygon points={path} />}
      <circle cx={begin.x} cy={begin.y} r={5} />
      {told.courses.length <= mostNumbers &&
        told.courses.map((_, n) => {
          const from = corners[n] ?? 0;
          const to = corners[n + 1] ?? placed.length;
          const [a = begin, b = begin] = [placed[from], placed[to] ?? begin];
          const middle = to - from > 1 ? placed[Math.floor((from + to) / 2)] : undefined;
          const at = middle ?? { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
          return (
            <text key={n} x={at.x} y={at.y}>
              {n + 1}
            </text>
          );
        })}
    </svg>
  );
};
