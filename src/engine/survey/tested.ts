import type { Row } from './rows.ts';
import { product, redundancyOf, shadowOf, type Strength } from './strength.ts';

/**
 * A standardised residual over this is no chance: one good reading of a thousand is over it. W. Baarda,
 * A Testing Procedure for Use in Geodetic Networks (Delft, 1968); from memory.
 */
export const critical = 3.29;

/** Where the others show less of an error, nothing can be said of a reading. Ours, no published source. */
const leastRedundancy = 1e-4;

/** Two residuals that go together so closely cannot be told apart. Ours, no published source. */
const together = 0.999;

/** A row that was tested against the others. */
export interface Tested {
  readonly row: Row;
  readonly redundancy: number;
  /** Its standardised residual, without its sign. */
  readonly size: number;
}

/** A residual over its own standard deviation; null where nothing else tells of it. */
export const standardisedOf = ({ off }: Row, redundancy: number): number | null =>
  redundancy < leastRedundancy ? null : off / Math.sqrt(redundancy);

const known = new WeakMap<Strength, ReadonlyMap<Row, number>>();

/** The redundancy number of every row; worked out once for a strength. */
export const redundanciesIn = (strength: Strength): ReadonlyMap<Row, number> => {
  const found =
    known.get(strength) ??
    new Map(strength.rows.map((row) => [row, redundancyOf(row, strength)] as const));
  known.set(strength, found);
  return found;
};

/** The rows that can be tested, the largest residual first; fixes are rough, and are not tested. */
export const testedIn = (
  strength: Strength,
  redundancies: ReadonlyMap<Row, number> = redundanciesIn(strength),
): Tested[] =>
  strength.rows
    .flatMap((row): Tested[] => {
      if (row.sighting.seen.kind === 'fix') return [];
      const redundancy = redundancies.get(row) ?? 0;
      const w = standardisedOf(row, redundancy);
      return w === null ? [] : [{ row, redundancy, size: Math.abs(w) }];
    })
    .toSorted((a, b) => b.size - a.size);

/** The correlation of the residuals of two rows. */
const correlation = (a: Tested, b: Tested, strength: Strength): number =>
  -product(shadowOf(a.row, strength), shadowOf(b.row, strength)) /
  Math.sqrt(a.redundancy * b.redundancy);

/** Those of some rows whose residuals go with that of one, so that they cannot be told from it. */
export const alikeTo = (
  first: Tested,
  tested: readonly Tested[],
  strength: Strength,
): readonly Tested[] =>
  tested.filter((one) => one !== first && Math.abs(correlation(first, one, strength)) > together);
