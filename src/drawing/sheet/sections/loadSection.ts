import type { Layout } from '../../../engine/layout.ts';
import type { Site } from '../../../site/site.ts';
import { loadTable } from '../../tables/loadTable.ts';
import type { Stack } from '../flow/block.ts';
import { heading } from '../flow/heading.ts';
import { layTable } from '../flow/layTable.ts';
import { under } from '../flow/stacks.ts';

/** What goes on the truck. */
export const loadSection = (site: Site, layout: Layout, width: number): Stack[] => {
  const table = loadTable(layout, site);
  const { again } = layTable(table, width);
  return [
    under(heading(table.title, width), { ...layTable({ ...table, title: '' }, width), again }),
  ];
};
