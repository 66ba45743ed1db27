import type { Load } from '../../engine/load/load.ts';
import type { Site } from '../../site/site.ts';
import { loadTable } from './loadTable.ts';
import type { Table } from './table.ts';

/** The same for paper: what is needed and what is bought for it, without how it was counted. */
export const truckTable = (load: Pick<Load, 'lines'>, site: Site): Table => {
  const { title, columns: all, rows } = loadTable(load, site);
  const kept = 4;
  return { title, columns: all.slice(0, kept), rows: rows.map((row) => row.slice(0, kept)) };
};
