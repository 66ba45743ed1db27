import { describe, expect, it } from 'vitest';
import { paginate } from '../../../../src/drawing/sheet/flow/paginate.ts';
import { layTable } from '../../../../src/drawing/sheet/flow/layTable.ts';
import type { Table } from '../../../../src/drawing/tables/table.ts';
import { overlapsOf, textsOf } from '../../textsOf.ts';

const table: Table = {
  title: 'Holes',
  columns: [
    { heading: 'Post', align: 'left', share: 1 },
    { heading: 'Tape reads', align: 'right', share: 1 },
  ],
  rows: [
    ['A corner post with a good deal to say about itself', '0"'],
    ['1', '12\'-10 1/2"'],
  ],
};
const written = (atoms: Parameters<typeof textsOf>[0]): string[] =>
  textsOf(atoms).map(({ text }) => text);

describe('layTable', () => {
  it('[D21] heads it with title and columns, and says where it is continued', () => {
    const { head, again } = layTable(table, 3);
    expect(written(head.atoms).join(' ')).toBe('Holes Post Tape reads');
    expect(written(again.atoms).join(' ')).toBe('Holes, continued Post Tape reads');
  });

  it('[D132] names a group over its first row, and does not part the two', () => {
    const rows = [...table.rows, ...table.rows];
    const grouped = layTable({ ...table, rows, groups: ['A–B', 'A–B', 'B–C', 'B–C'] }, 3).rows;
    expect(grouped).toHaveLength(4);
    expect(grouped.map(({ atoms }) => written(atoms)[0])).toEqual(['A–B', '1', 'B–C', '1']);
    expect(overlapsOf(grouped[0]?.atoms ?? [])).toEqual([]);
  });

  it('[D151] repeats the name of a group where it goes on in the next column, and only there', () => {
    const cells = ['1', '12\'-10 1/2"'];
    const rows = Array.from({ length: 40 }, () => cells);
    const groups = rows.map((_, n) => (n < 3 ? 'A–B' : 'B–C'));
    const room = { x: 0, y: 0, width: 7, height: 4 };
    const pages = paginate([layTable({ ...table, rows, groups }, 7)], room);
    const names = pages.map(({ atoms }) => written(atoms).filter((text) => /^[AB]–/.test(text)));
    expect(names.length).toBeGreaterThan(2);
    expect(names[0]).toEqual(['A–B', 'B–C']);
    for (const page of names.slice(1)) expect(page).toEqual(['B–C, continued']);
    for (const { atoms } of pages) expect(overlapsOf(atoms)).toEqual([]);
  });

  it('[D151] cuts a long name of a group and not that it is continued', () => {
    const named = 'A–B, on the tape A–Q: hooked at A, a good deal in all';
    const groups = table.rows.map(() => named);
    const [, second] = layTable({ ...table, groups }, 3).rows;
    expect(written(second?.resumed?.atoms ?? []).join(' ')).toMatch(/^A–B, on .*…, continued$/);
  });

  it('[D22] words go on in the next line, figures stay on one', () => {
    const { rows } = layTable(table, 2.6);
    const [first, second] = rows;
    if (first === undefined || second === undefined) throw new Error('expected two rows');
    expect(written(first.atoms).slice(0, -1).join(' ')).toBe(table.rows[0]?.[0]);
    expect(written(first.atoms).length).toBeGreaterThan(2);
    expect(first.height).toBeGreaterThan(second.height);
    expect(written(second.atoms)).toEqual(['1', '12\'-10 1/2"']);
    expect(overlapsOf(first.atoms)).toEqual([]);
  });

  it('[D22] a figure is not cut in a column that was made to its measure', () => {
    const figures = Array.from(
      { length: 200 },
      (_, n) => `gate ${n}'-${n % 12} ${2 * (n % 8) + 1}/16"`,
    );
    for (const figure of figures) {
      // the words beside it take all the room that the figure does not need
      const cells = ['words that go on and on for want of room '.repeat(4), figure];
      const columns = table.columns.map((column) => ({ ...column, heading: '' }));
      const [row] = layTable({ ...table, columns, rows: [cells] }, 4).rows;
      expect(written(row?.atoms ?? [])).toContain(figure);
    }
  });

  it('says so where there are no rows', () => {
    const { rows } = layTable({ ...table, rows: [] }, 3);
    expect(rows.map(({ atoms }) => written(atoms))).toEqual([['none']]);
  });
});
