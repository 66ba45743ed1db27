import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Table } from '../../../src/drawing/tables/table.ts';
import { toCsv } from '../../../src/exporters/csv/toCsv.ts';

const columns = ['Tag', 'Reading'].map(
  (heading) => ({ heading, align: 'left', share: 1 }) as const,
);
const table = (title: string, ...rows: string[][]): Table => ({ title, columns, rows });

/** A reader of RFC 4180 text, written apart from the writer. */
const parse = (csv: string): string[][] => {
  const rows: string[][] = [];
  let row: string[] = [];
  const field = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/gy;
  for (const [, quoted, plain, end] of csv.matchAll(field)) {
    row.push(quoted === undefined ? (plain ?? '') : quoted.replaceAll('""', '"'));
    if (end === ',') continue;
    rows.push(row);
    row = [];
  }
  return rows;
};

/** Any text, and often what begins like a formula. */
const anyText = fc.oneof(
  fc.string(),
  fc.string({ unit: fc.constantFrom(...'\'" \t\r\n=+-@＝＋－＠\u200b\u202eA1,') }),
);

describe('toCsv', () => {
  it('writes the columns once and each row behind its table', () => {
    const csv = toCsv('Run', [
      table('A–B', ['A', '0"'], ['1', '9\'-0"']),
      table('B–C', ['B', '0"']),
    ]);
    expect(csv).toBe('Run,Tag,Reading\r\nA–B,A,"0"""\r\nA–B,1,"9\'-0"""\r\nB–C,B,"0"""\r\n');
  });

  it('[X5] no cell starts a formula, and every other text comes back as it was', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(anyText, anyText)), (rows) => {
        const read = parse(toCsv('Of', [table('T', ...rows)]));
        expect(read.length).toBe(rows.length + 1);
        read.flat().forEach((cell) => {
          expect(cell).not.toMatch(/^[\s"]*[=+\-@＝＋－＠]/);
          expect(cell).not.toMatch(/^[\t\r\n]/);
        });
        rows.forEach(([tag], n) => {
          expect([tag, `'${tag}`]).toContain(read[n + 1]?.[1]);
        });
      }),
    );
  });

  it.each([
    '=1+1',
    '+1',
    '-2',
    '@SUM(A1)',
    '\t=1',
    '\r=1',
    '\n1',
    ' =1',
    '"=1',
    '\u202e=1',
    '＝1',
    '＋1',
    '－1',
    '＠SUM(A1)',
    '\u00a0 -1',
  ])('[X5] makes %j harmless', (text) => {
    expect(parse(toCsv('Of', [table(text, [text, text])]))[1]).toEqual(
      Array.from({ length: 3 }, () => `'${text}`),
    );
  });

  it('is empty for no tables', () => {
    expect(toCsv('Run', [])).toBe('');
  });
});
