import type { Layout } from '../../../engine/layout.ts';
import type { Site } from '../../../site/site.ts';
import { flagTable } from '../../tables/flagTable.ts';
import type { Stack } from '../flow/block.ts';
import { layTable } from '../flow/layTable.ts';

/** What stands open, under the names that the plan shows; nothing where nothing does. */
export const flagsSection = (site: Site, layout: Layout, width: number): Stack[] =>
  layout.flags.length === 0 ? [] : [{ ...layTable(flagTable(site, layout), width), gap: 0.3 }];
