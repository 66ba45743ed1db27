import type { Table } from '../drawing/tables/table.ts';
import { columns } from './columns.ts';

/** A table as aligned lines under its headings; no lines for a table without rows. */
export const tableLines = ({ columns: heads, rows }: Table): string[] =>
  rows.length === 0
    ? []
    : columns(
        [heads.map(({ heading }) => heading), ...rows],
        heads.map(({ align }) => align),
      );
