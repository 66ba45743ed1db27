import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readCsv } from '../../../src/importers/csv/readCsv.ts';
import { writeCsv } from '../../../src/exporters/csv/writeCsv.ts';

const cellsOf = (text: string) => {
  const rows = readCsv(text);
  if (!rows.ok) throw new Error(rows.reason);
  return rows.value.map(({ cells }) => cells);
};

describe('readCsv', () => {
  it('[X6] reads back every cell that was written', () => {
    const cell = fc.oneof(fc.string(), fc.stringMatching(/^['=+\-@\t\r",\n ]{0,6}$/));
    const row = fc.array(cell, { minLength: 2, maxLength: 5 });
    fc.assert(
      fc.property(fc.array(row), (rows) => {
        expect(cellsOf(writeCsv(rows))).toEqual(rows);
      }),
    );
  });

  it('[I1] names the line on which a row begins, whatever ends the lines', () => {
    const lines = (text: string) => {
      const rows = readCsv(text);
      return rows.ok ? rows.value.map(({ line }) => line) : [];
    };
    expect(lines('a,b\r\n"c\r\nd",e\r\n\r\nf,g')).toEqual([1, 2, 5]);
    expect(lines('a,b\n"c\n\nd",e\nf,g\n')).toEqual([1, 2, 5]);
    expect(lines('a,b\rc,d')).toEqual([1, 2]);
  });

  it('[I1] forgives a byte order mark and inch marks, and leaves blank lines out', () => {
    expect(cellsOf('\uFEFFa,1 7/8"\n \n"b",2"\n')).toEqual([
      ['a', '1 7/8"'],
      ['b', '2"'],
    ]);
    expect(cellsOf('')).toEqual([]);
    expect(cellsOf('a,')).toEqual([['a', '']]);
  });
});
