import type { Combination } from './combination.ts';
import type { TriangleFill } from './triangleFill.ts';
import { emptyTriangle, vanishing, type UpperTriangle } from './upperTriangle.ts';

/**
 * An equation of a least-squares problem: by how much each of its unknowns changes what it is off by, and
 * what that is where they are 0.
 */
export interface Equation extends Combination {
  readonly off: number;
}

/** How many numbers a row of the block of a front has. */
const widthOf = ({ starts, fronts }: TriangleFill, front: number): number => {
  const first = fronts[front]!;
  return starts[first + 1]! - starts[first]! + 1;
};

/**
 * What is turned together, front by front: each has a block of rows over its columns, which are those of an
 * upper triangle, each with its right side last.
 */
interface Turning {
  readonly triangle: UpperTriangle;
  /** All rows, at the `blocks` of its fill. */
  readonly rows: Float64Array;
  /** Where each column stands in the front that is at hand. */
  readonly at: Int32Array;
  /** Room for a row. */
  readonly row: Float64Array;
}

/** Nothing turned in yet but for what holds the own columns of each front. */
const begun = (fill: TriangleFill, hold: number): Turning => {
  const triangle = emptyTriangle(fill);
  const size = triangle.right.length;
  const rows = new Float64Array(fill.blocks.at(-1)!);
  let widest = 0;
  for (let column = 0; column < size; column += 1) {
    const front = fill.frontOf[column]!;
    const width = widthOf(fill, front);
    rows[fill.blocks[front]! + (column - fill.fronts[front]!) * (width + 1)] = hold;
    if (width > widest) widest = width;
  }
  return { triangle, rows, at: new Int32Array(size), row: new Float64Array(widest) };
};

/**
 * Turns `row` into the block of a front from one of its columns on, by the rotation of Givens that clears one
 * at a time.
 */
const turnInto = (
  { triangle: { fill }, rows, row }: Turning,
  front: number,
  from: number,
): void => {
  const width = widthOf(fill, front);
  const block = fill.blocks[front]!;
  for (let column = from; column < width - 1; column += 1) {
    const value = row[column]!;
    if (Math.abs(value) < vanishing) continue;
    const start = block + column * width;
    const own = rows[start + column]!;
    if (own === 0) {
      for (let n = column; n < width; n += 1) rows[start + n] = row[n]!;
      return;
    }
    const long = Math.sqrt(own * own + value * value);
    const inverse = 1 / long;
    const c = own * inverse;
    const s = value * inverse;
    rows[start + column] = long;
    for (let n = column + 1; n < width; n += 1) {
      const a = rows[start + n]!;
      const b = row[n]!;
      rows[start + n] = c * a + s * b;
      row[n] = c * b - s * a;
    }
  }
};

/** Takes a front at hand. */
const take = ({ triangle: { fill }, at }: Turning, front: number): void => {
  const first = fill.fronts[front]!;
  const [start, end] = [fill.starts[first]!, fill.starts[first + 1]!];
  for (let n = start; n < end; n += 1) at[fill.columns[n]!] = n - start;
};

/** Turns an equation into the front that is at hand. */
const turnEquation = (turning: Turning, front: number, { columns, values, off }: Equation) => {
  const { triangle, at, row } = turning;
  const width = widthOf(triangle.fill, front);
  row.fill(0, 0, width);
  let first = width;
  for (let n = 0; n < columns.length; n += 1) {
    const here = at[columns[n]!]!;
    row[here]! += values[n]!;
    if (here < first) first = here;
  }
  row[width - 1] = -off;
  turnInto(turning, front, first);
};

/** Keeps the rows of a front's own columns, which nothing changes any more. */
const keepOwn = ({ triangle, rows }: Turning, front: number): void => {
  const { fill, values, right } = triangle;
  const width = widthOf(fill, front);
  const first = fill.fronts[front]!;
  for (let column = first; column < fill.fronts[front + 1]!; column += 1) {
    const rowEnd = fill.blocks[front]! + (column - first + 1) * width - 1;
    const end = fill.starts[column + 1]!;
    for (let n = fill.starts[column]!; n < end; n += 1) values[n] = rows[rowEnd - end + n]!;
    right[column] = rows[rowEnd]!;
  }
};

/** Turns what a front leaves of its later columns into the front of the first of these. */
const passOn = (turning: Turning, front: number): void => {
  const { rows, at, row } = turning;
  const { fill } = turning.triangle;
  const { starts, columns, fronts, frontOf, blocks } = fill;
  const start = starts[fronts[front]!]!;
  const own = fronts[front + 1]! - fronts[front]!;
  const last = widthOf(fill, front) - 1;
  if (own === last) return;
  const next = frontOf[columns[start + own]!]!;
  const nextWidth = widthOf(fill, next);
  take(turning, next);
  for (let left = own; left < last; left += 1) {
    const begin = blocks[front]! + left * (last + 1);
    row.fill(0, 0, nextWidth);
    for (let n = left; n < last; n += 1) row[at[columns[start + n]!]!] = rows[begin + n]!;
    row[nextWidth - 1] = rows[begin + last]!;
    turnInto(turning, next, at[columns[start + left]!]!);
  }
};

/** The equations by the front of the first of their columns. */
const byFront = ({ fronts, frontOf }: TriangleFill, equations: readonly Equation[]) => {
  const parted: Equation[][] = Array.from({ length: fronts.length - 1 }, () => []);
  for (const equation of equations) {
    let front = parted.length;
    for (const column of equation.columns) front = Math.min(front, frontOf[column]!);
    parted[front]?.push(equation);
  }
  return parted;
};

/**
 * The triangle of the equations of a least-squares problem; its right side is what mends what they are off
 * by. The columns of each must be of one front, or later ones that its first may fill. A hold is the weight of every
 * unknown's staying 0. Each front is turned for itself, and what it leaves of later columns is turned into the next: the
 * multifrontal method of I. Duff and J. Reid (1983), by the rotations of A. George and M. Heath (1980), both from memory.
 */
export const turned = (
  fill: TriangleFill,
  equations: readonly Equation[],
  hold = 0,
): UpperTriangle => {
  const turning = begun(fill, Math.sqrt(hold));
  byFront(fill, equations).forEach((own, front) => {
    take(turning, front);
    for (const equation of own) turnEquation(turning, front, equation);
    keepOwn(turning, front);
    passOn(turning, front);
  });
  return turning.triangle;
};
