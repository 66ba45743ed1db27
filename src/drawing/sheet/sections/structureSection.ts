import type { Layout } from '../../../engine/layout.ts';
import type { Site } from '../../../site/site.ts';
import { weakestSoil } from '../../../trade/soils.ts';
import { structureTable } from '../../tables/structureTable.ts';
import type { Stack } from '../flow/block.ts';
import { heading } from '../flow/heading.ts';
import { layTable } from '../flow/layTable.ts';
import { paragraph } from '../flow/paragraph.ts';
import { loose } from '../flow/stacks.ts';

const groundText = ({ soil, isolated }: Site['conditions']): string =>
  `${soil === null ? `Ground: nobody has said; counted as ${weakestSoil.label}` : `Ground: ${soil}, as told`}${isolated ? ', twice its lateral figures since half an inch of movement does no harm' : ''} (${weakestSoil.source.text}).`;

/**
 * What wind, frost and ground ask of the line posts, beside what is planned; nothing where nobody has told of
 * any. It compares, and says so.
 */
export const structureSection = (site: Site, layout: Layout, width: number): Stack[] => {
  const table = structureTable(site, layout);
  if (table.rows.length === 0) return [];
  const said = [
    ...paragraph(groundText(site.conditions), width),
    ...paragraph(
      'These figures compare the plan with the rules named. They are no design: wind, soil and frost of this place are for its building department and a licensed professional to say.',
      width,
    ),
  ];
  return [loose(heading('Structure', width), said, 0.3), layTable(table, width)];
};
