import type { Layout } from '../../../engine/layout.ts';
import type { Site } from '../../../site/site.ts';
import { cautions } from '../../../trade/cautions.ts';
import { flagTable } from '../../tables/flagTable.ts';
import { loadTable } from '../../tables/loadTable.ts';
import type { Stack } from '../flow/block.ts';
import { heading } from '../flow/heading.ts';
import { layTable } from '../flow/layTable.ts';
import { paragraph } from '../flow/paragraph.ts';
import { inRanges } from './inRanges.ts';
import { loose, under } from '../flow/stacks.ts';

/** Between two paragraphs. */
const space = { height: 0.07, atoms: [] };

const text = (title: string, paragraphs: readonly string[], width: number): Stack[] =>
  paragraphs.length === 0
    ? []
    : [
        loose(
          heading(title, width),
          paragraphs.flatMap((own) => [...paragraph(own, width), space]),
          0.3,
        ),
      ];

const notesOf = (site: Site): string[] => [
  ...(site.job.remark.trim() === '' ? [] : [site.job.remark]),
  ...Object.values(site.features).flatMap((feature) =>
    feature.kind === 'note' ? [[feature.label, feature.text].filter(Boolean).join(': ')] : [],
  ),
];

const cautionTexts = (): string[] =>
  cautions.map(({ text: own, source }, n) =>
    source === null ? `${n + 1}. ${own}` : `${n + 1}. ${own} (${source.text})`,
  );

/**
 * What goes on the truck, what stands open, what was noted, what found no room on the plan
 * (`left`), and the cautions that every set carries.
 */
export const listsSection = (
  site: Site,
  layout: Layout,
  left: readonly string[],
  width: number,
): Stack[] => {
  const flags = { ...layTable(flagTable(layout), width), gap: 0.3 };
  const off = left.length === 0 ? [] : [`${inRanges(left).join('; ')}.`];
  return [
    under(heading('Load list', width), layTable({ ...loadTable(layout, site), title: '' }, width)),
    ...(layout.flags.length === 0 ? [] : [flags]),
    ...text('Notes', notesOf(site), width),
    ...text('Not lettered on the plan for want of room', off, width),
    ...text('Cautions', cautionTexts(), width),
  ];
};
