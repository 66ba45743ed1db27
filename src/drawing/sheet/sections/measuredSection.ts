import type { Layout } from '../../../engine/layout.ts';
import { markName } from '../../../engine/survey/markName.ts';
import { standsText } from '../../../engine/survey/standsText.ts';
import type { Site } from '../../../site/site.ts';
import { measuredTable } from '../../tables/measuredTable.ts';
import type { Stack } from '../flow/block.ts';
import { heading } from '../flow/heading.ts';
import { layTable } from '../flow/layTable.ts';
import { paragraph } from '../flow/paragraph.ts';
import { loose } from '../flow/stacks.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** Which marks no reading holds, by their names; null where all are held, or nothing is said of them. */
const sketchedText = (site: Site, { posts, survey }: Layout): string | null => {
  if (survey.loose.length === 0) return null;
  const names = survey.loose.map((id) => markName(site, posts, id));
  return phrase`As sketched, held by no reading: ${names.join(', ')}.`;
};

/**
 * How the plan was measured: how it stands by its readings, the marks that stand where they were sketched,
 * and every reading. Nothing where nothing was read.
 */
export const measuredSection = (site: Site, layout: Layout, width: number): Stack[] => {
  const table = measuredTable(site, layout);
  if (table.rows.length === 0) return [];
  const texts = [`${standsText(layout.survey)}.`, sketchedText(site, layout)];
  const said = texts.flatMap((text) => (text === null ? [] : paragraph(text, width)));
  return [
    loose(heading(phrase`How the plan was measured`, width), said, 0.3),
    layTable(table, width),
  ];
};
