import { describe, expect, it, vi } from 'vitest';
import type * as Forms from '../../../src/drawing/sheet/flow/layForm.ts';
import type * as Tables from '../../../src/drawing/sheet/flow/layTable.ts';
import { sheetSet } from '../../../src/drawing/sheet/sheetSet.ts';
import { sheetTableNames, sheetTables } from '../../../src/drawing/tables/sheetTables.ts';
import { samples } from '../../exporters/samples.ts';

/** A table as it was handed to be laid out on a sheet. */
interface Laid {
  readonly columns: readonly { readonly heading: string }[];
  readonly rows: readonly (readonly string[])[];
}

const laid = vi.hoisted((): Laid[] => []);

vi.mock(import('../../../src/drawing/sheet/flow/layTable.ts'), async (original) => {
  const { layTable } = (await original()) as typeof Tables;
  return {
    layTable: (table, ...rest) => {
      laid.push(table);
      return layTable(table, ...rest);
    },
  };
});

vi.mock(import('../../../src/drawing/sheet/flow/layForm.ts'), async (original) => {
  const { layForm } = (await original()) as typeof Forms;
  return {
    layForm: (form, ...rest) => {
      laid.push(form);
      return layForm(form, ...rest);
    },
  };
});

/** A row by the headings of its cells; those of one heading are put together. */
const byHeading = ({ columns }: Laid, row: readonly string[]): string[] =>
  columns.map(({ heading }, n) => `${heading}: ${row[n] ?? ''}`);

describe.each(samples)('the sheets of $name', ({ site, layout }) => {
  it('[D120] have no table and no form whose rows are in none of those that go by a name', () => {
    laid.length = 0;
    sheetSet(site, layout, { paper: 'letter', siteText: '' });
    const named = sheetTableNames.flatMap((name) =>
      sheetTables(name, site, layout).tables.flatMap((table) =>
        table.rows.map((row) => new Set(byHeading(table, row))),
      ),
    );
    expect(laid.length).toBeGreaterThan(4);
    const lost = laid.flatMap((table) =>
      table.rows
        // how many have no room on the cover is no row of a table
        .filter(([first = '']) => !/^and \d+ more/.test(first))
        .map((row) => byHeading(table, row))
        .filter((cells) => !named.some((row) => cells.every((cell) => row.has(cell)))),
    );
    expect(lost).toEqual([]);
  });
});
