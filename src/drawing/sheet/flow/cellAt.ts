import type { Cell } from '../../atom.ts';

/** A cell in a row of `columns` cells, row 0 being the head; all numbers from 0. */
export const cellAt = (row: number, column: number, columns: number): Cell => ({
  is: row === 0 ? 'head' : 'body',
  row,
  column,
  columns,
  spans: 1,
});

/** The name of a group over row `row` of a table, as wide as the table. */
export const groupCell = (row: number, columns: number): Cell => ({
  is: 'head',
  row: row - 0.5,
  column: 0,
  columns,
  spans: columns,
});
