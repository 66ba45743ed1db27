import type { Layout } from '../../engine/layout.ts';
import type { Site } from '../../site/site.ts';
import type { Atom } from '../atom.ts';
import { checkValue } from './checkValue.ts';
import type { Stack } from './flow/block.ts';
import { columnsIn, paginate } from './flow/paginate.ts';
import type { Page } from './page.ts';
import { laid, type Orientation, type Paper, type PaperName } from './papers.ts';
import { planScale, planSheet } from './plan/planSheet.ts';
import { holesSection } from './sections/holesSection.ts';
import { listsSection } from './sections/listsSection.ts';
import { openingsSection } from './sections/openingsSection.ts';
import { sheetFrame } from './sheetFrame.ts';
import { titleBlock } from './titleBlock.ts';

export interface SheetOptions {
  readonly paper: PaperName;
  /** Which way the sheets lie; the way that gives the larger plan unless said, wide if equal. */
  readonly orientation?: Orientation;
  /** The saved text of the site: the title block carries its check value. */
  readonly siteText: string;
}

/** What stands in the frame of one sheet. */
interface Draft {
  readonly title: string;
  readonly atoms: readonly Atom[];
}

const chosenPaper = (site: Site, layout: Layout, { paper, orientation }: SheetOptions): Paper => {
  if (orientation !== undefined) return laid(paper, orientation);
  const ratio = (way: Orientation): number =>
    planScale(site, layout, sheetFrame(laid(paper, way)).content).ratio;
  return laid(paper, ratio('portrait') < ratio('landscape') ? 'portrait' : 'landscape');
};

const named = (part: string, stacks: readonly Stack[]): Stack[] =>
  stacks.map((stack) => ({ ...stack, part }));

const draftsOf = (site: Site, layout: Layout, paper: Paper): Draft[] => {
  const { content } = sheetFrame(paper);
  const { width } = columnsIn(content);
  const plan = planSheet(site, layout, content);
  const stacks = [
    ...named('Openings', openingsSection(site, layout, width)),
    ...named('Tapes and holes', holesSection(site, layout, width)),
    ...named('Load list, cautions', listsSection(site, layout, plan.left, width)),
  ];
  return [
    { title: 'Plan', atoms: plan.atoms },
    ...paginate(stacks, content).map(({ part, atoms }) => ({ title: part, atoms })),
  ];
};

/**
 * The whole crew sheet: the plan, the openings, the tapes with the holes, then load list, flags,
 * notes and cautions, as many pages as they need, each with its title block.
 */
export const sheetSet = (site: Site, layout: Layout, options: SheetOptions): readonly Page[] => {
  const paper = chosenPaper(site, layout, options);
  const drafts = draftsOf(site, layout, paper);
  const check = checkValue(options.siteText);
  const frame = sheetFrame(paper);
  return drafts.map(({ title, atoms }, n) => {
    const name = { title, number: n + 1, of: drafts.length, check };
    return {
      title: `${n + 1} ${title}`,
      paper,
      atoms: [...atoms, ...titleBlock(frame, site, name)],
    };
  });
};
