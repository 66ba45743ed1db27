import type { Layout } from '../../engine/layout.ts';
import type { Site } from '../../site/site.ts';
import { checkValue } from '../../site/checkValue.ts';
import type { Stack } from './flow/block.ts';
import { columnsIn, paginate } from './flow/paginate.ts';
import type { Layer, Page } from './page.ts';
import { laid, type Orientation, type Paper, type PaperName } from './papers.ts';
import { planKey, planScale, planSheet } from './plan/planSheet.ts';
import { cautionsSection } from './sections/cautionsSection.ts';
import { flagsSection } from './sections/flagsSection.ts';
import { holesSection } from './sections/holesSection.ts';
import { loadSection } from './sections/loadSection.ts';
import { measuredSection } from './sections/measuredSection.ts';
import { openingsSection } from './sections/openingsSection.ts';
import { structureSection } from './sections/structureSection.ts';
import { townRulesSection } from './sections/townRulesSection.ts';
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
  readonly layers: readonly Layer[];
}

const chosenPaper = (site: Site, layout: Layout, { paper, orientation }: SheetOptions): Paper => {
  if (orientation !== undefined) return laid(paper, orientation);
  const ratio = (way: Orientation): number =>
    planScale(site, layout, sheetFrame(laid(paper, way)).content).ratio;
  return laid(paper, ratio('portrait') < ratio('landscape') ? 'portrait' : 'landscape');
};

const named = (part: string, stacks: readonly Stack[]): Stack[] =>
  stacks.map((stack) => ({ ...stack, part }));

/** The part of the set that lists the flags. */
const flagsPart = 'Flags';

/** Parts of a set as one title: `Openings, tapes and holes`. */
const partsTitle = ([first = '', ...rest]: readonly string[]): string =>
  [first, ...rest.map((part) => part.charAt(0).toLowerCase() + part.slice(1))].join(', ');

const draftsOf = (site: Site, layout: Layout, paper: Paper): Draft[] => {
  const { content } = sheetFrame(paper);
  const { width } = columnsIn(content);
  const plan = planSheet(site, layout, content);
  const stacks = [
    ...named('Openings', openingsSection(site, layout, width)),
    ...named('Tapes and holes', holesSection(site, layout, width)),
    ...named('Load list', loadSection(site, layout, width)),
    ...named(flagsPart, flagsSection(site, layout, width)),
    ...named('Measuring', measuredSection(site, layout, width)),
    ...named('Structure', structureSection(site, layout, width)),
    ...named('Rules of towns', townRulesSection(site, width)),
    ...named('Cautions', cautionsSection(site, plan.left, width)),
  ];
  const pages = paginate(stacks, content);
  const flagged = pages.findIndex(({ parts }) => parts.includes(flagsPart));
  // the plan itself is sheet 1
  const key = planKey(site, layout, content, flagged < 0 ? null : flagged + 2);
  return [
    { title: 'Plan', layers: [...plan.layers, { name: 'sheet', atoms: key }] },
    ...pages.map(({ parts, atoms }) => ({
      title: partsTitle(parts),
      layers: [{ name: 'sheet', atoms } as const],
    })),
  ];
};

/**
 * The whole crew sheet: the plan, the openings, the tapes with the holes, then load list, flags,
 * how the plan was measured, structure, rules of towns, notes and cautions, as many pages as they need, each with its title block.
 */
export const sheetSet = (site: Site, layout: Layout, options: SheetOptions): readonly Page[] => {
  const paper = chosenPaper(site, layout, options);
  const drafts = draftsOf(site, layout, paper);
  const check = checkValue(options.siteText);
  const frame = sheetFrame(paper);
  return drafts.map(({ title, layers }, n) => {
    const name = { title, number: n + 1, of: drafts.length, check };
    return {
      title: `${n + 1} ${title}`,
      paper,
      layers: [...layers, { name: 'sheet', atoms: titleBlock(frame, site, name) }],
      links: [],
    };
  });
};
