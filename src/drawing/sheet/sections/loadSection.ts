import type { Layout } from '../../../engine/layout.ts';
import { loadOf } from '../../../engine/load/loadOf.ts';
import type { Site } from '../../../site/site.ts';
import { cutTable } from '../../tables/cutTable.ts';
import { truckTable } from '../../tables/truckTable.ts';
import type { Stack } from '../flow/block.ts';
import { heading } from '../flow/heading.ts';
import { layTable } from '../flow/layTable.ts';
import { under } from '../flow/stacks.ts';

/** What goes on the truck, and how sticks and rolls are cut. */
export const loadSection = (site: Site, layout: Layout, width: number): Stack[] => {
  const { lines, tickets } = loadOf(site, layout);
  const table = truckTable({ lines }, site);
  const { again } = layTable(table, width);
  return [
    under(heading(table.title, width), { ...layTable({ ...table, title: '' }, width), again }),
    ...tickets.map((ticket) => layTable(cutTable(ticket, site), width)),
  ];
};
