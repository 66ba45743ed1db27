import type { Site } from '../../../site/site.ts';
import { cautions } from '../../../trade/cautions.ts';
import type { Stack } from '../flow/block.ts';
import { heading } from '../flow/heading.ts';
import { loose } from '../flow/stacks.ts';
import { unbroken } from '../flow/unbroken.ts';
import { inRanges } from './inRanges.ts';
import { phrase } from '../../../phrases/phrase.ts';

const text = (title: string, paragraphs: readonly string[], width: number): Stack[] => {
  const blocks = paragraphs.flatMap((own) => unbroken(own, width));
  return blocks.length === 0 ? [] : [loose(heading(title, width), blocks, 0.3)];
};

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

/** What was noted, what found no room on the plan (`left`), and the cautions of every set. */
export const cautionsSection = (site: Site, left: readonly string[], width: number): Stack[] => {
  const off = left.length === 0 ? [] : [`${inRanges(left).join('; ')}.`];
  return [
    ...text(phrase`Notes`, notesOf(site), width),
    ...text(phrase`Not lettered on the plan for want of room`, off, width),
    ...text(phrase`Cautions`, cautionTexts(), width),
  ];
};
