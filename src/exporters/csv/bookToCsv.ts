import type { Hardware } from '../../site/hardware.ts';
import type { Parts } from '../../site/parts.ts';
import { bookColumns, keyColumn } from './bookColumns.ts';
import { writeCsv } from './writeCsv.ts';

const before = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

const byKindAndName = (a: readonly [string, Hardware], b: readonly [string, Hardware]): number =>
  before(a[1].kind, b[1].kind) || before(a[1].label, b[1].label) || before(a[0], b[0]);

/**
 * A hardware book as comma-separated text: a header, then a row for each part, by kind and name.
 * Lengths are written as on a tape. `bookFromCsv` reads it back as it was.
 */
export const bookToCsv = (book: Parts): string => {
  const header = [...bookColumns.map(({ name }) => name), keyColumn];
  const rows = Object.entries<Hardware>(book)
    .toSorted(byKindAndName)
    .map(([id, part]) => [
      ...bookColumns.map(({ write }) => write(part)),
      id.slice(id.indexOf(':') + 1),
    ]);
  return writeCsv([header, ...rows]);
};
