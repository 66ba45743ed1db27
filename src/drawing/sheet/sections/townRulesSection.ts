import type { Site } from '../../../site/site.ts';
import { townRuleTable } from '../../tables/townRuleTable.ts';
import type { Stack } from '../flow/block.ts';
import { heading } from '../flow/heading.ts';
import { layTable } from '../flow/layTable.ts';
import { paragraph } from '../flow/paragraph.ts';
import { loose } from '../flow/stacks.ts';
import { phrase } from '../../../phrases/phrase.ts';

const said = phrase`As the company keeps them; flags say where the plan differs from a limit. Whether they hold today, and for this yard, is for the building department there to say.`;

/** The rules of towns that the site carries, as a table with where each stands; nothing for none. */
export const townRulesSection = (site: Site, width: number): Stack[] => {
  const table = townRuleTable(site);
  if (table.rows.length === 0) return [];
  return [
    loose(heading(phrase`Rules of towns`, width), paragraph(said, width), 0.3),
    layTable({ ...table, title: phrase`What they ask` }, width),
  ];
};
