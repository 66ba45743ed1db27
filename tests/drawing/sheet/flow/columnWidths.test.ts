import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellPad, columnWidths } from '../../../../src/drawing/sheet/flow/columnWidths.ts';
import { letters } from '../../../../src/drawing/sheet/letters.ts';
import type { Table } from '../../../../src/drawing/tables/table.ts';
import { textWidth } from '../../../../src/drawing/textWidth.ts';

const cell = fc.constantFrom('', 'A', '9\'-10 1/2"', 'Male and female hinge', 'measured');
const table: fc.Arbitrary<Table> = fc.integer({ min: 1, max: 6 }).chain((count) =>
  fc.record({
    title: fc.constant('T'),
    columns: fc.array(
      fc.record({
        heading: fc.constantFrom('Post', 'Tape reads'),
        align: fc.constantFrom('left' as const, 'right' as const),
        share: fc.constantFrom(1, 2),
      }),
      { minLength: count, maxLength: count },
    ),
    rows: fc.array(fc.array(cell, { minLength: count, maxLength: count }), { maxLength: 5 }),
  }),
);

describe('columnWidths', () => {
  it('[D22] fill the width', () => {
    fc.assert(
      fc.property(table, fc.constantFrom(2, 7, 20), (own, width) => {
        const total = columnWidths(own, width).reduce((so, one) => so + one, 0);
        expect(total).toBeCloseTo(width, 9);
      }),
    );
  });

  it('[D22] a figure has room on one line wherever the table can give it', () => {
    fc.assert(
      fc.property(table, (own) => {
        const widths = columnWidths(own, 20);
        own.columns.forEach(({ align }, n) => {
          if (align === 'left') return;
          for (const row of own.rows) {
            const need = textWidth(row[n] ?? '', letters.body, 'regular') + 2 * cellPad;
            expect(widths[n]).toBeGreaterThanOrEqual(need - 1e-9);
          }
        });
      }),
    );
  });
});
