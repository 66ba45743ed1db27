import { alike } from './alike.ts';

/** A piece of work that was done, and what it was worked out from. */
interface Piece {
  readonly from: readonly unknown[];
  readonly value: unknown;
  /** The pieces that it was cut into itself. */
  readonly within?: Pieces;
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
  /** As `take`; where it has to be done again, `work` is handed what there was, whatever that was worked out from. */
  readonly next: (id: string, from: readonly unknown[], work: (before: T | undefined) => T) => T;
  /** The piece of before where `stands` says that it is still so, else what `work` makes of it. */
  readonly renew: (
    id: string,
    stands: (before: T) => boolean,
    work: (before: T | undefined) => T,
  ) => T;
  /** What was worked out before, the very same object, where what there is now is alike in all it holds. */
  readonly settle: (id: string, now: T) => T;
  /** The list of before, the very same one, where what there is now has the very same things in the same order. */
  readonly list: (id: string, now: T & readonly unknown[]) => T;
  /**
   * As `take`, of work that is cut into pieces itself: where it has to be done again, `work` is handed a carry
   * of its own that starts from these. All of them are kept by one look at what the whole is worked out from.
   */
  readonly part: (id: string, from: readonly unknown[], work: (own: Carry) => T) => T;
}

/** Takes over pieces of the layout before, and gathers those of this one. */
export interface Carry {
  readonly shelf: <T>(kind: string) => Shelf<T>;
  readonly pieces: Pieces;
}

const sameThings = (a: readonly unknown[], b: readonly unknown[]): boolean => {
  if (a === b) return true;
  if (a.length !== b.length) return false;
  for (let n = 0; n < a.length; n += 1) if (!Object.is(a[n], b[n])) return false;
  return true;
};

const isFrom = (piece: Piece | undefined, from: readonly unknown[]): piece is Piece =>
  piece !== undefined && sameThings(piece.from, from);

/** A carry that starts from the pieces of the layout before, and of others; from none it works out everything. */
export const newCarry = (...before: readonly (Pieces | undefined)[]): Carry => {
  const pieces = new Map<string, Map<string, Piece>>();
  const shelf = <T>(kind: string): Shelf<T> => {
    const own = pieces.get(kind) ?? new Map<string, Piece>();
    pieces.set(kind, own);
    // of most kinds there is one before, or there are two: the present and the draft of a gesture
    const olds = before.flatMap((all) => all?.get(kind) ?? []);
    const keep = (id: string, piece: Piece): T => {
      own.set(id, piece);
      // a kind is asked for with one type
      return piece.value as T;
    };
    const found = (id: string, from: readonly unknown[]): Piece | null => {
      const now = own.get(id);
      if (isFrom(now, from)) return now;
      for (const old of olds) {
        const piece = old.get(id);
        if (isFrom(piece, from)) return piece;
      }
      return null;
    };
    const oldOf = (id: string): Piece | undefined => {
      const now = own.get(id);
      if (now !== undefined) return now;
      for (const old of olds) {
        const piece = old.get(id);
        if (piece !== undefined) return piece;
      }
      return undefined;
    };
    return {
      take: (id, from, work) => keep(id, found(id, from) ?? { from, value: work() }),
      settle: (id, value) => {
        for (const all of [own, ...olds]) {
          const old = all.get(id);
          if (old !== undefined && alike(old.value, value)) return keep(id, old);
        }
        return keep(id, { from: [], value });
      },
      renew: (id, stands, work) => {
        const old = oldOf(id);
        const value = old?.value as T | undefined;
        const still = old !== undefined && value !== undefined && stands(value);
        return keep(id, still ? old : { from: [], value: work(value) });
      },
      next: (id, from, work) => {
        const done = found(id, from);
        if (done !== null) return keep(id, done);
        const old = oldOf(id);
        return keep(id, { from, value: work(old?.value as T | undefined) });
      },
      list: (id, now) => keep(id, found(id, now) ?? { from: now, value: now }),
      part: (id, from, work) => {
        const done = found(id, from);
        if (done !== null) return keep(id, done);
        const inner = newCarry(...[own, ...olds].flatMap((all) => all.get(id)?.within ?? []));
        const value = work(inner);
        return keep(id, { from, value, within: inner.pieces });
      },
    };
  };
  return { shelf, pieces };
};
