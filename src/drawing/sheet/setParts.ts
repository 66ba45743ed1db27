import type { Layout } from '../../engine/layout.ts';
import type { Site } from '../../site/site.ts';
import type { Stack } from './flow/block.ts';
import type { ColumnSize } from './flow/paginate.ts';
import { flagsSection } from './sections/flagsSection.ts';
import { holesSection } from './sections/holesSection.ts';
import { loadSection } from './sections/loadSection.ts';
import { measuredSection } from './sections/measuredSection.ts';
import { openingsSection } from './sections/openingsSection.ts';
import { setRecordSection } from './sections/setRecordSection.ts';
import { structureSection } from './sections/structureSection.ts';
import { tiesSection } from './sections/tiesSection.ts';
import { townRulesSection } from './sections/townRulesSection.ts';
import { phrase, phraseOf } from '../../phrases/phrase.ts';

/** Who a set is printed for: each gets the cover, the plan, the flags, the cautions, and what is theirs. */
export const readers = ['rep', 'office', 'crew'] as const;
export type Reader = (typeof readers)[number];

/** A part of the set that runs on from page to page after the plan. */
export interface SetPart {
  readonly name: string;
  /** Whose sets it is in. */
  readonly in: readonly Reader[];
  readonly stacks: (site: Site, layout: Layout, column: ColumnSize) => readonly Stack[];
}

/** What is set to the width of a column however high that is. */
const toWidth =
  (section: (site: Site, layout: Layout, width: number) => readonly Stack[]): SetPart['stacks'] =>
  (site, layout, { width }) =>
    section(site, layout, width);

/** The part of the set that lists the flags. */
export const flagsPart = phrase`Flags`;

/** The parts of a set in their order; the cautions follow, once it is known what the plan left out. */
export const setParts: readonly SetPart[] = [
  { name: phrase`Openings`, in: ['office', 'crew'], stacks: openingsSection },
  { name: phrase`Tapes and holes`, in: ['crew'], stacks: toWidth(holesSection) },
  { name: phrase`Ties`, in: ['crew'], stacks: toWidth(tiesSection) },
  { name: phrase`Load list`, in: ['office', 'crew'], stacks: toWidth(loadSection) },
  { name: flagsPart, in: readers, stacks: toWidth(flagsSection) },
  { name: phrase`Measuring`, in: ['office', 'crew'], stacks: toWidth(measuredSection) },
  { name: phrase`Structure`, in: ['office', 'crew'], stacks: toWidth(structureSection) },
  {
    name: phrase`Rules of towns`,
    in: ['rep', 'office'],
    stacks: (site, _layout, { width }) => townRulesSection(site, width),
  },
  { name: phraseOf('part')`Set record`, in: ['crew'], stacks: toWidth(setRecordSection) },
];

/** The parts of the set of a reader; all of them where it is for everyone. */
export const partsFor = (reader: Reader | null): readonly SetPart[] =>
  reader === null ? setParts : setParts.filter((part) => part.in.includes(reader));
