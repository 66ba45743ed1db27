import { boundsOf, boundsOverlap, type Bounds } from '../../geometry/bounds.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import { segmentsOutline } from './polylineOutline.ts';
import type { Hatch } from '../hatch.ts';
import type { Outline } from '../outline.ts';

/** Between two hatch lines, measured across the page; paper inches. */
const spacing = 0.15;

const shared = (a: Bounds, b: Bounds | null): Bounds | null => {
  if (b === null) return a;
  if (!boundsOverlap(a, b)) return null;
  return {
    minX: Math.max(a.minX, b.minX),
    minY: Math.max(a.minY, b.minY),
    maxX: Math.min(a.maxX, b.maxX),
    maxY: Math.min(a.maxY, b.maxY),
  };
};

/** Lines at 45° across upright bounds, on a raster that starts at `origin`. */
const slanted = (bounds: Bounds, origin: PaperPoint, lean: 1 | -1): Outline => {
  const { minX, minY, maxX, maxY } = bounds;
  const height = maxY - minY;
  const start = origin.x + lean * (origin.y - minY);
  const from = Math.ceil((minX - (lean > 0 ? 0 : height) - start) / spacing);
  const to = Math.floor((maxX + (lean > 0 ? height : 0) - start) / spacing);
  return segmentsOutline(
    Array.from({ length: Math.max(0, to - from + 1) }, (_, n) => {
      const x = start + (from + n) * spacing;
      return [
        { x, y: minY },
        { x: x - lean * height, y: maxY },
      ] as const;
    }),
  );
};

/** Level lines across upright bounds, on a raster that starts at `origin`. */
const level = ({ minX, maxX, minY, maxY }: Bounds, { y }: PaperPoint): Outline => {
  const [from, to] = [Math.ceil((minY - y) / spacing), Math.floor((maxY - y) / spacing)];
  return segmentsOutline(
    Array.from({ length: Math.max(0, to - from + 1) }, (_, n) => {
      const at = y + (from + n) * spacing;
      return [
        { x: minX, y: at },
        { x: maxX, y: at },
      ] as const;
    }),
  );
};

/**
 * Hatching for the ground inside points on the paper, to be clipped to them: 45° lines, two ways
 * for `cross`; level ones for `level`. Only the part inside `window` is drawn; the raster hangs on the first point, so it
 * stays where it is while the window moves.
 */
export const hatchLines = (
  points: readonly PaperPoint[],
  hatch: Hatch,
  window: Bounds | null,
): Outline => {
  const [origin] = points;
  const all = boundsOf(points);
  const bounds = all === null ? null : shared(all, window);
  if (bounds === null || origin === undefined) return [];
  if (hatch === 'level') return level(bounds, origin);
  const up = slanted(bounds, origin, 1);
  return hatch === 'diagonal' ? up : [...up, ...slanted(bounds, origin, -1)];
};
