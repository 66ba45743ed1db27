import { Matrix, SingularValueDecomposition } from 'ml-matrix';
import type { MarkId } from '../../../src/site/ids.ts';
import type { Site } from '../../../src/site/site.ts';
import { plainly, rowsAt, type Plain } from './plainSolve.ts';
import { plainStrength, type PlainStrength } from './plainStrength.ts';

/** What a library says of how marks of a site can move, where they stand. */
export interface PlainHeld {
  readonly plain: Plain;
  readonly rows: readonly Float64Array[];
  readonly strength: PlainStrength;
  /** Every mark of a firm reading, fixed ones too. */
  readonly marks: readonly MarkId[];
  /** Marks that can move in no way at all. */
  readonly still: ReadonlySet<MarkId>;
  /** All marks that go along with two as on one board; null where these two do not. */
  readonly boardOf: (a: MarkId, b: MarkId) => ReadonlySet<MarkId> | null;
}

/** What is known no better is not known, inches; a little below what the engine has, and far above rounding. */
const loose = 1e6;

const rankOf = (rows: readonly (readonly number[])[]): number =>
  rows.length === 0
    ? 0
    : new SingularValueDecomposition(new Matrix(rows.map((row) => [...row])), {
        autoTranspose: true,
      }).diagonal.filter((value) => value > 1e-6).length;

/** How marks of a site can move, by singular vectors. Its marks stand where the readings put them. */
export const plainHeld = (site: Site): PlainHeld => {
  const plain = plainly(site);
  const { free, drawn, placesOf } = plain;
  const rows = rowsAt(plain, drawn);
  const strength = plainStrength(rows, drawn.length, loose);
  const at = placesOf(drawn);
  const numbers = new Map(free.map((id, n) => [id, n] as const));
  const touched = Object.values(site.observations).flatMap((seen) =>
    seen.kind === 'fix' ? [] : Object.values(seen).filter((one) => String(one).startsWith('mark:')),
  );
  const marks = [...new Set(touched as MarkId[])].toSorted();
  const movesOf = (ids: readonly MarkId[]): number[][] =>
    strength.free.map((motion) =>
      ids.flatMap((id) => {
        const n = numbers.get(id);
        return n === undefined ? [0, 0] : [motion[2 * n]!, motion[2 * n + 1]!];
      }),
    );
  const still = new Set(
    marks.filter((id) => movesOf([id]).every((move) => Math.hypot(...move) < 1e-7)),
  );
  /** Whether all moves of some marks are shifts and turns of them as a whole. */
  const rigid = (ids: readonly MarkId[]): boolean => {
    const [{ x, y }] = [at(ids[0]!)];
    const far = Math.max(...ids.map((id) => Math.hypot(at(id).x - x, at(id).y - y)));
    const whole = [
      ids.flatMap(() => [1, 0]),
      ids.flatMap(() => [0, 1]),
      ids.flatMap((id) => [-(at(id).y - y) / far, (at(id).x - x) / far]),
    ];
    return rankOf([...whole, ...movesOf(ids)]) === 3;
  };
  const boardOf = (a: MarkId, b: MarkId): ReadonlySet<MarkId> | null => {
    if (Math.hypot(at(a).x - at(b).x, at(a).y - at(b).y) < 1 || !rigid([a, b])) return null;
    return new Set(marks.filter((id) => id === a || id === b || rigid([a, b, id])));
  };
  return { plain, rows, strength, marks, still, boardOf };
};
