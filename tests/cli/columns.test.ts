import { describe, expect, it } from 'vitest';
import { columns } from '../../src/cli/columns.ts';

describe('columns', () => {
  it('aligns each column to its side and leaves nothing at the end of a line', () => {
    const rows = [
      ['A', '1', 'end'],
      ['B12', '100', ''],
      ['C', '20'],
    ];
    expect(columns(rows, ['left', 'right'])).toEqual(['A      1  end', 'B12  100', 'C     20']);
  });

  it('counts a fraction sign or an inch mark as one character', () => {
    expect(
      columns([
        ['9½', 'x'],
        ['10″', 'y'],
      ]),
    ).toEqual(['9½   x', '10″  y']);
  });

  it('keeps a row on one line whatever its texts hold', () => {
    expect(columns([['two\nlines', 'x']])).toEqual(['two lines  x']);
  });

  it('gives no lines for no rows', () => {
    expect(columns([])).toEqual([]);
  });
});
