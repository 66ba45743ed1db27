import { alike } from './alike.ts';

/** A piece of work that was done, and what it was worked out from. */
interface Piece {
  readonly from: readonly unknown[];
  readonly value: unknown;
}

/** What one layout leaves for the next: its pieces by kind and then by id. */
export type Pieces = ReadonlyMap<string, ReadonlyMap<string, Piece>>;

/** Pieces of one kind. */
export interface Shelf<T> {
  /**
   * The piece of an id as it was worked out before, where that was from the very same things (the
   * same objects, equal numbers and texts) in the same order; else worked out by `work`, which must
   * follow from these things alone.
   */
  readonly take: (id: string, from: readonly unknown[], work: () => T) => T;
  /** What was worked out before, the very same object, where what there is now is alike in all it holds. */
  readonly settle: (id: string, now: T) => T;
}

/** Takes over pieces of the layout before, and gathers those of this one. */
export interface Carry {
  readonly shelf: <T>(kind: string) => Shelf<T>;
  readonly pieces: Pieces;
}

const sameThings = (a: readonly unknown[], b: readonly unknown[]): boolean => {
  if (a.length !== b.length) return false;
  for (let n = 0; n < a.length; n += 1) if (!Object.is(a[n], b[n])) return false;
  return true;
};

/** A carry that starts from the pieces of the layout before; from none it works out everything. */
export const newCarry = (before: Pieces = new Map()): Carry => {
  const pieces = new Map<string, Map<string, Piece>>();
  const shelf = <T>(kind: string): Shelf<T> => {
    const own = pieces.get(kind) ?? new Map<string, Piece>();
    pieces.set(kind, own);
    const known = before.get(kind);
    const keep = (id: string, piece: Piece): T => {
      own.set(id, piece);
      // a kind is asked for with one type
      return piece.value as T;
    };
    return {
      take: (id, from, work) => {
        const now = own.get(id);
        if (now !== undefined && sameThings(now.from, from)) return now.value as T;
        const old = known?.get(id);
        const same = old !== undefined && sameThings(old.from, from);
        return keep(id, same ? old : { from, value: work() });
      },
      settle: (id, value) => {
        const old = own.get(id) ?? known?.get(id);
        return keep(id, old !== undefined && alike(old.value, value) ? old : { from: [], value });
      },
    };
  };
  return { shelf, pieces };
};
