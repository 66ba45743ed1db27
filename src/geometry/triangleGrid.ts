import { boundsOf, boundsOverlap, expandBounds } from './bounds.ts';
import { spot } from './tolerance.ts';
import type { Bounds } from './bounds.ts';
import type { SitePoint } from './point.ts';

/** Squares laid over triangles on the ground, each with the triangles that may reach into it. */
export interface TriangleGrid {
  /** Of all triangles, 1/64 in wider. */
  readonly bounds: Bounds;
  readonly columns: number;
  readonly rows: number;
  /** Row by row from the south-west; indexes of triangles, rising. */
  readonly cells: readonly (readonly number[])[];
}

/** More squares than this are more to fill than they save. */
const mostCells = 16_384;

type Frame = Omit<TriangleGrid, 'cells'>;
type Span = readonly [from: number, to: number];

const frameFor = (bounds: Bounds, count: number): Frame => {
  const [width, height] = [bounds.maxX - bounds.minX, bounds.maxY - bounds.minY];
  const cells = Math.min(count, mostCells);
  const columns = Math.min(cells, Math.max(1, Math.round(Math.sqrt((cells * width) / height))));
  return { bounds, columns, rows: Math.max(1, Math.round(cells / columns)) };
};

const spanOf = (low: number, high: number, pace: number, count: number): Span => {
  const inside = (n: number) => Math.min(count - 1, Math.max(0, Math.floor(n)));
  return [inside(low / pace), inside(high / pace)];
};

/** The indexes of the cells that some bounds touch. */
const cellsUnder = ({ bounds, columns, rows }: Frame, box: Bounds): number[] => {
  const { minX, minY, maxX, maxY } = bounds;
  const across = spanOf(box.minX - minX, box.maxX - minX, (maxX - minX) / columns, columns);
  const up = spanOf(box.minY - minY, box.maxY - minY, (maxY - minY) / rows, rows);
  const found: number[] = [];
  for (let row = up[0]; row <= up[1]; row += 1) {
    for (let column = across[0]; column <= across[1]; column += 1) {
      found.push(row * columns + column);
    }
  }
  return found;
};

/** Lays a grid over triangles, each told by its corners; null for none. */
export const triangleGrid = (triangles: readonly (readonly SitePoint[])[]): TriangleGrid | null => {
  const whole = boundsOf(triangles.flat());
  if (whole === null) return null;
  const frame = frameFor(expandBounds(whole, spot), 4 * triangles.length);
  const cells = Array.from({ length: frame.columns * frame.rows }, (): number[] => []);
  triangles.forEach((corners, n) => {
    const box = boundsOf(corners);
    if (box === null) return;
    for (const cell of cellsUnder(frame, expandBounds(box, spot))) cells[cell]?.push(n);
  });
  return { ...frame, cells };
};

/** The triangles that may touch some bounds, rising; all that do are among them. */
export const trianglesNear = (grid: TriangleGrid | null, box: Bounds): readonly number[] => {
  if (grid === null || !boundsOverlap(grid.bounds, box)) return [];
  const cells = cellsUnder(grid, box).map((cell) => grid.cells[cell] ?? []);
  if (cells.length === 1) return cells[0] ?? [];
  return [...new Set(cells.flat())].sort((a, b) => a - b);
};
