import { describe, expect, it } from 'vitest';
import { layTable } from '../../../../src/drawing/sheet/flow/layTable.ts';
import { paginate } from '../../../../src/drawing/sheet/flow/paginate.ts';
import { laid } from '../../../../src/drawing/sheet/papers.ts';
import type { Page } from '../../../../src/drawing/sheet/page.ts';
import type { Table } from '../../../../src/drawing/tables/table.ts';
import { toPdf } from '../../../../src/exporters/pdf/toPdf.ts';
import { popplerStructure, qpdfCheck } from '../poppler.ts';
import { sheetFonts } from '../sheetFonts.ts';
import { someInfo } from '../someInfo.ts';

const left = { align: 'left', share: 1 } as const;
const columns = ['Post', 'What', 'Tape reads'].map((heading) => ({ heading, ...left }));
const stays: Table = {
  title: 'Holes',
  columns,
  rows: [
    ['A', 'end', '0"'],
    ['1', '', '8\'-0"'],
    ['B', 'corner', '16\'-0"'],
  ],
  groups: ['A–B', 'A–B', 'B–C'],
};
const long: Table = {
  title: 'Ties',
  columns: columns.slice(0, 2),
  rows: Array.from({ length: 60 }, (_, n) => [`P${n}`, 'line']),
};

/** The structure of tables on pages by poppler: each line how deep it is, and what it is or says. */
const structureOf = async (...tables: readonly Table[]) => {
  const paper = laid('letter', 'portrait');
  const room = { x: 0.5, y: 0.5, width: 7.5, height: 8 };
  const stacks = tables.map((table) => layTable(table, 7));
  const pages = paginate(stacks, room).map(({ atoms }, n): Page => ({
    title: `${n + 1} Lists`,
    paper,
    layers: [{ name: 'sheet', atoms }],
    links: [],
  }));
  const bytes = await toPdf(pages, sheetFonts, someInfo, null);
  expect(qpdfCheck(bytes)).toContain('No syntax or stream encoding errors found');
  return popplerStructure(bytes)
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line) => ({ depth: line.search(/\S/), is: line.trim().replace(/[ :].*$/, ''), line }));
};

type Line = Awaited<ReturnType<typeof structureOf>>[number];

/** The lines under a line that is so deep, for each line of a sort. */
const under = (lines: readonly Line[], sort: string): Line[][] =>
  lines.flatMap(({ is, depth }, n) => {
    if (is !== sort) return [];
    const end = lines.findIndex((one, k) => k > n && one.depth <= depth);
    return [lines.slice(n + 1, end < 0 ? undefined : end)];
  });

const said = (lines: readonly Line[]): string =>
  lines.flatMap(({ line }) => /^ *"(.*)"$/.exec(line)?.[1] ?? []).join(' ');

const cellsOf = (row: readonly Line[]): string[] =>
  ['TH', 'TD'].flatMap((sort) => under(row, sort).map((cell) => `${sort} ${said(cell)}`.trim()));

describe('tables of a PDF, by poppler', () => {
  it('[X76] a table has its head, its rows and every cell, also one without a text', async () => {
    const lines = await structureOf(stays);
    const [table = [], ...others] = under(lines, 'Table');
    expect(others).toEqual([]);
    expect(under(table, 'TR').map(cellsOf)).toEqual([
      ['TH Post', 'TH What', 'TH Tape reads'],
      ['TH A–B'],
      ['TD A', 'TD end', 'TD 0"'],
      ['TD 1', 'TD', 'TD 8\'-0"'],
      ['TH B–C'],
      ['TD B', 'TD corner', 'TD 16\'-0"'],
    ]);
    // its title is a paragraph before it
    expect(said(under(lines, 'P')[0] ?? [])).toBe('Holes');
  });

  it('[X76] the name of a group is as wide as its table, and heads are those of columns', async () => {
    const lines = (await structureOf(stays)).map(({ line }) => line.trim());
    expect(lines.filter((line) => /^\/?ColSpan/.test(line))).toHaveLength(2);
    expect(lines.filter((line) => /^\/?Scope.*Column/.test(line))).toHaveLength(5);
  });

  it('[X76] tables one after the other, and on the next page, are tables of their own with their heads', async () => {
    const lines = await structureOf(stays, { ...stays, title: '' }, long);
    const tables = under(lines, 'Table').map((table) => under(table, 'TR').map(cellsOf));
    const [one, two, ...parts] = tables;
    expect([one?.[0], two?.[0]].map((head) => head?.length)).toEqual([3, 3]);
    expect(parts.length).toBeGreaterThan(1);
    for (const [head] of parts) expect(head).toEqual(['TH Post', 'TH What']);
    expect(parts.flatMap((rows) => rows.slice(1))).toEqual(
      long.rows.map((row) => row.map((cell) => `TD ${cell}`)),
    );
  });
});
