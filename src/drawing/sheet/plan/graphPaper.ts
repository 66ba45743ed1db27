import type { Bounds } from '../../../geometry/bounds.ts';
import type { Atom } from '../../atom.ts';
import { segmentsOutline } from '../../explode/polylineOutline.ts';
import type { Projection } from '../../projection.ts';

/** Where lines `step` apart on the ground cross a span of paper, on a raster that starts at `zero`. */
const crossings = (low: number, high: number, zero: number, step: number): number[] => {
  const first = Math.ceil((low - zero) / step);
  const count = Math.max(0, Math.floor((high - zero) / step) - first + 1);
  return Array.from({ length: count }, (_, n) => zero + (first + n) * step);
};

/**
 * Graph paper under a plan: lines a round length apart on the ground, through the ground's origin,
 * every fifth stronger. `size` in ground inches.
 */
export const graphPaper = (room: Bounds, { origin, scale }: Projection, size: number): Atom[] => {
  const { minX, minY, maxX, maxY } = room;
  const zero = { x: -origin.x * scale, y: origin.y * scale };
  return [1, 5].map((times): Atom => {
    const step = size * scale * times;
    const up = crossings(minX, maxX, zero.x, step).map(
      (x) =>
        [
          { x, y: minY },
          { x, y: maxY },
        ] as const,
    );
    const across = crossings(minY, maxY, zero.y, step).map(
      (y) =>
        [
          { x: minX, y },
          { x: maxX, y },
        ] as const,
    );
    return {
      do: 'stroke',
      pen: { ink: 'grid', width: times === 1 ? 0.005 : 0.011, dash: [] },
      outline: segmentsOutline([...up, ...across]),
    };
  });
};
