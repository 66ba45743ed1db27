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

/** What is turned together over the columns of one front: rows of an upper triangle, each with its right side last. */
interface Block {
  /** How many numbers a row has. */
  readonly width: number;
  readonly rows: Float64Array;
}

/** Turns a row into a block from one of its columns on, by the rotation of Givens that clears one at a time. */
const turnInto = ({ width, rows }: Block, row: Float64Array, from: number): void => {
  for (let column = from; column < width - 1; column += 1) {
    const value = row[column]!;
    if (Math.abs(value) < vanishing) continue;
    const start = column * width;
    const own = rows[start + column]!;
    if (own === 0) {
      for (let n = column; n < width; n += 1) rows[start + n] = row[n]!;
      return;
    }
    const long = Math.sqrt(own * own + value * value);
    const c = own / long;
    const s = value / long;
    rows[start + column] = long;
    for (let n = column + 1; n < width; n += 1) {
      const a = rows[start + n]!;
      const b = row[n]!;
      rows[start + n] = c * a + s * b;
      row[n] = c * b - s * a;
    }
  }
};

/** The work on one triangle, front by front. */
interface Turning {
  readonly triangle: UpperTriangle;
  readonly blocks: readonly Block[];
  /** Where each column stands in the front that is at hand. */
  readonly at: Int32Array;
  /** Room for a row. */
  readonly row: Float64Array;
}

/** Blocks of all fronts, empty but for what holds the columns of their own. */
const emptyBlocks = ({ starts, fronts }: TriangleFill, hold: number): Block[] =>
  Array.from(fronts.subarray(1), (end, front): Block => {
    const first = fronts[front]!;
    const width = starts[first + 1]! - starts[first]! + 1;
    const rows = new Float64Array((width - 1) * width);
    for (let own = 0; own < end - first; own += 1) rows[own * (width + 1)] = hold;
    return { width, rows };
  });

/** Takes a front at hand. */
const take = ({ triangle: { fill }, at }: Turning, front: number): void => {
  const first = fill.fronts[front]!;
  const [start, end] = [fill.starts[first]!, fill.starts[first + 1]!];
  for (let n = start; n < end; n += 1) at[fill.columns[n]!] = n - start;
};

const turnEquation = ({ at, row }: Turning, block: Block, { columns, values, off }: Equation) => {
  row.fill(0, 0, block.width);
  let first = block.width;
  for (let n = 0; n < columns.length; n += 1) {
    const here = at[columns[n]!]!;
    row[here]! += values[n]!;
    if (here < first) first = here;
  }
  row[block.width - 1] = -off;
  turnInto(block, row, first);
};

/** Keeps the rows of a front's own columns, which nothing changes any more. */
const keepOwn = ({ triangle, blocks }: Turning, front: number): void => {
  const { fill, values, right } = triangle;
  const { width, rows } = blocks[front]!;
  const first = fill.fronts[front]!;
  for (let column = first; column < fill.fronts[front + 1]!; column += 1) {
    const end = (column - first + 1) * width - 1;
    const long = fill.starts[column + 1]! - fill.starts[column]!;
    values.set(rows.subarray(end - long, end), fill.starts[column]);
    right[column] = rows[end]!;
  }
};

/** Turns what a front leaves of its later columns into the front of the first of these. */
const passOn = (turning: Turning, front: number): void => {
  const { triangle, blocks, at, row } = turning;
  const { starts, columns, fronts, frontOf } = triangle.fill;
  const { width, rows } = blocks[front]!;
  const start = starts[fronts[front]!]!;
  const own = fronts[front + 1]! - fronts[front]!;
  if (own === width - 1) return;
  const next = frontOf[columns[start + own]!]!;
  const into = blocks[next]!;
  take(turning, next);
  for (let left = own; left < width - 1; left += 1) {
    row.fill(0, 0, into.width);
    for (let n = left; n < width - 1; n += 1)
      row[at[columns[start + n]!]!] = rows[left * width + n]!;
    row[into.width - 1] = rows[left * width + width - 1]!;
    turnInto(into, row, at[columns[start + left]!]!);
  }
};

/** The equations by the front of the first of their columns. */
const byFront = ({ fronts, frontOf }: TriangleFill, equations: readonly Equation[]) => {
  const parted: Equation[][] = Array.from({ length: fronts.length - 1 }, () => []);
  for (const equation of equations) {
    const front = equation.columns.reduce(
      (least, column) => Math.min(least, frontOf[column]!),
      fronts.length,
    );
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
  const triangle = emptyTriangle(fill);
  const blocks = emptyBlocks(fill, Math.sqrt(hold));
  const widest = blocks.reduce((most, { width }) => Math.max(most, width), 0);
  const turning: Turning = {
    triangle,
    blocks,
    at: new Int32Array(triangle.right.length),
    row: new Float64Array(widest),
  };
  byFront(fill, equations).forEach((own, front) => {
    take(turning, front);
    for (const equation of own) turnEquation(turning, blocks[front]!, equation);
    keepOwn(turning, front);
    passOn(turning, front);
  });
  return triangle;
};
