import { setShape, shapeSize, type BoxShapes } from '../../geometry/boxShapes.ts';
import type { OrientedBox } from '../../geometry/orientedBox.ts';
import { shapesOverlap } from '../../geometry/shapesOverlap.ts';
import { weigh, type Enough } from './coverCost.ts';
import type { PerWeight, Weight } from './weight.ts';

type PaperBox = OrientedBox<'paper'>;

/** Boxes on paper in cells, so that only neighbours are compared. Shapes that are asked about are the first of their list. */
export interface ShapeGrid {
  /** Adds a box; its number is that of it until it is dropped. */
  readonly add: (box: PaperBox, weight: Weight) => number;
  readonly drop: (n: number) => void;
  /** Whether nothing comes within a margin of a shape. */
  readonly isClear: (shape: BoxShapes, margin: number) => boolean;
  /** How much of each weight a shape lies on, counted up to `enough`. */
  readonly count: (shape: BoxShapes, enough?: Enough) => PerWeight;
  /** How many boxes a shape lies on. */
  readonly countAll: (shape: BoxShapes) => number;
}

/** Side of a cell, paper inches. */
const cell = 0.5;

/** Cells of one row, so that a cell has one number; no sheet is that wide. */
const row = 1 << 20;

const nothing: readonly number[] = [];

/** An empty grid. */
export const makeShapeGrid = (): ShapeGrid => {
  const cells = new Map<number, number[]>();
  const shapes: BoxShapes = [];
  const weights: Weight[] = [];
  /** The search that met each last: it may lie in several cells. */
  const met: number[] = [];
  const dropped: number[] = [];
  let search = 0;
  const eachCell = (n: number, deed: (cellNumber: number) => void): void => {
    const at = n * shapeSize;
    const firstX = Math.floor((shapes[at] ?? 0) / cell);
    const firstY = Math.floor((shapes[at + 1] ?? 0) / cell);
    const lastX = Math.floor((shapes[at + 2] ?? 0) / cell);
    const lastY = Math.floor((shapes[at + 3] ?? 0) / cell);
    for (let x = firstX; x <= lastX; x++) for (let y = firstY; y <= lastY; y++) deed(x * row + y);
  };
  const add = (box: PaperBox, weight: Weight): number => {
    const n = dropped.pop() ?? weights.length;
    setShape(shapes, n, box);
    weights[n] = weight;
    met[n] = 0;
    eachCell(n, (at) => {
      const there = cells.get(at);
      if (there === undefined) cells.set(at, [n]);
      else there.push(n);
    });
    return n;
  };
  const drop = (n: number): void => {
    eachCell(n, (at) => {
      const there = cells.get(at);
      const place = there?.indexOf(n) ?? -1;
      if (place >= 0) there?.splice(place, 1);
    });
    dropped.push(n);
  };
  /** Goes through what comes within `margin` of a shape until `seen` says that it is enough; whether it did. */
  const touching = (
    shape: BoxShapes,
    margin: number,
    seen: (n: number) => 'go on' | 'enough',
  ): boolean => {
    const over = margin * (Math.abs(shape[8] ?? 0) + Math.abs(shape[9] ?? 0));
    const firstX = Math.floor(((shape[0] ?? 0) - over) / cell);
    const firstY = Math.floor(((shape[1] ?? 0) - over) / cell);
    const lastX = Math.floor(((shape[2] ?? 0) + over) / cell);
    const lastY = Math.floor(((shape[3] ?? 0) + over) / cell);
    search += 1;
    for (let x = firstX; x <= lastX; x++)
      for (let y = firstY; y <= lastY; y++)
        for (const n of cells.get(x * row + y) ?? nothing) {
          if (met[n] === search) continue;
          met[n] = search;
          if (shapesOverlap(shapes, n, shape, margin) && seen(n) === 'enough') return true;
        }
    return false;
  };
  const isClear = (shape: BoxShapes, margin: number): boolean =>
    !touching(shape, margin, () => 'enough');
  const count = (shape: BoxShapes, enough?: Enough): PerWeight => {
    const sum = { thin: 0, chain: 0, solid: 0, heavy: 0, leader: 0 };
    touching(shape, 0, (n) => {
      sum[weights[n] ?? 'thin'] += 1;
      const lost = enough !== undefined && weigh(sum, enough.cost) > enough.limit;
      return lost ? 'enough' : 'go on';
    });
    return sum;
  };
  const countAll = (shape: BoxShapes): number => {
    let sum = 0;
    touching(shape, 0, () => {
      sum += 1;
      return 'go on';
    });
    return sum;
  };
  return { add, drop, isClear, count, countAll };
};
