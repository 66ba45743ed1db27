import { whitened } from '../../geometry/upperTriangle.ts';
import type { MarkId } from '../../site/ids.ts';
import type { Board, Part } from './bodies.ts';
import type { Covariance } from './ellipse.ts';
import { moveOf, type Motion } from './motion.ts';
import { product } from './strength.ts';

/** A mark and the share that it has in a place. */
export interface Share {
  readonly mark: MarkId;
  readonly share: number;
}

/** What the places of a body are told from, and so what they are off by. */
export interface Datum {
  readonly parts: readonly Part[];
  readonly body: Board;
  /** The marks that are taken for the body: their moves average out. */
  readonly by: ReadonlySet<MarkId>;
  /** For each part the motions that take the body along whole; orthonormal on the datum. */
  readonly whole: ReadonlyMap<Part, readonly Whole[]>;
}

/** A motion of a body as a whole by columns: of all its marks, and of those of the datum alone. */
interface Whole {
  readonly all: Float64Array;
  readonly inDatum: Float64Array;
}

/** What is left of a motion when those before it are taken out; smaller than this it is made up of them. */
const trace = 1e-6;

const scaled = (vector: Float64Array, by: number) => vector.map((move) => move * by);

/** A motion by columns, of so many marks alone. */
const columnsOf = ({ strength: { frame } }: Part, motion: Motion, marks: ReadonlySet<MarkId>) => {
  const vector = new Float64Array(frame.size);
  for (const [id, column] of frame.columns) {
    if (!marks.has(id)) continue;
    const { x, y } = moveOf(motion, id);
    [vector[column], vector[column + 1]] = [x, y];
  }
  return vector;
};

/** The motions of a body as a whole, by Gram and Schmidt with the moves of the datum's marks alone. */
const wholeMotions = (part: Part, body: Board, by: ReadonlySet<MarkId>): readonly Whole[] => {
  const inDatum = columnsMask(part, by);
  const inner = (a: Float64Array, b: Float64Array): number =>
    a.reduce((sum, move, n) => sum + (inDatum[n] === 1 ? move * b[n]! : 0), 0);
  const found: Float64Array[] = [];
  for (const motion of part.motions) {
    let vector: Float64Array = columnsOf(part, motion, body.marks);
    const size = Math.sqrt(inner(vector, vector));
    if (size < trace * trace) continue;
    vector = scaled(vector, 1 / size);
    // twice is enough: what the first round leaves of the others is rounding
    for (const other of [...found, ...found]) {
      const along = inner(vector, other);
      vector = vector.map((move, n) => move - along * other[n]!);
    }
    const left = Math.sqrt(inner(vector, vector));
    if (left > trace) found.push(scaled(vector, 1 / left));
  }
  return found.map((all) => ({ all, inDatum: all.map((move, n) => move * inDatum[n]!) }));
};

const columnsMask = ({ strength: { frame } }: Part, marks: ReadonlySet<MarkId>): Uint8Array => {
  const mask = new Uint8Array(frame.size);
  for (const [id, column] of frame.columns) {
    if (marks.has(id)) mask.fill(1, column, column + 2);
  }
  return mask;
};

/**
 * Tells the places of a body from some of its marks. Where the body can move as a whole, these are told
 * to shift and turn by nothing on the whole (inner constraints: the sum of their moves, and of their
 * turns about the middle, is zero); a body that is fast needs no such thing.
 */
export const datumBy = (parts: readonly Part[], body: Board, by: ReadonlySet<MarkId>): Datum => {
  const whole = new Map(parts.map((part) => [part, wholeMotions(part, body, by)] as const));
  return { parts, body, by, whole };
};

/** A combination of the unknowns less what the datum's marks move and turn by on the whole. */
const besideDatum = (part: Part, { whole }: Datum, combination: Float64Array): Float64Array => {
  const left = combination.slice();
  for (const { all, inDatum } of whole.get(part) ?? []) {
    const along = product(combination, all);
    for (let n = 0; n < left.length; n += 1) left[n]! -= along * inDatum[n]!;
  }
  return left;
};

/** R⁻ᵀ of the x and y of a place that is made up of marks of a body, by parts. */
export const shadowsOf = (
  datum: Datum,
  shares: readonly Share[],
): readonly (readonly [Part, Float64Array, Float64Array])[] =>
  datum.parts
    .filter(({ strength }) => shares.some(({ mark }) => strength.frame.columns.has(mark)))
    .map((part) => {
      const { frame, triangle } = part.strength;
      const [x, y] = [0, 1].map((axis) => {
        const combination = new Float64Array(frame.size);
        for (const { mark, share } of shares) {
          const column = frame.columns.get(mark);
          if (column !== undefined) combination[column + axis]! += share;
        }
        return whitened(triangle, besideDatum(part, datum, combination));
      });
      return [part, x!, y!] as const;
    });

/** The covariance of a place that is made up of marks of a body, relative to its datum. */
export const covarianceOf = (datum: Datum, shares: readonly Share[]): Covariance =>
  shadowsOf(datum, shares).reduce(
    (sum, [, x, y]) => ({
      xx: sum.xx + product(x, x),
      xy: sum.xy + product(x, y),
      yy: sum.yy + product(y, y),
    }),
    { xx: 0, xy: 0, yy: 0 },
  );
