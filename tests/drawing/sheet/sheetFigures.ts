import { letterExtent, textBox } from '../../../src/drawing/lettering/textBox.ts';
import type { Page } from '../../../src/drawing/sheet/page.ts';
import { pageAtoms } from '../../../src/drawing/sheet/pageAtoms.ts';
import { sheetFrame } from '../../../src/drawing/sheet/sheetFrame.ts';
import { corners } from '../../../src/geometry/orientedBox.ts';
import { overlapsOf, textsOf } from '../textsOf.ts';
import type { LineKind } from './strokesOf.ts';
import { textsOnLines } from './textsOnLines.ts';

/** What a check of some pages found. Heights of letters in inches. */
export interface SheetFigures {
  readonly pages: number;
  readonly texts: number;
  readonly overlaps: readonly string[];
  readonly outside: readonly string[];
  /** Texts that a line passes through, by the kind of line: on pages with a plan, and on all others. */
  readonly onPlans: Readonly<Partial<Record<LineKind, readonly string[]>>>;
  readonly onOthers: Readonly<Partial<Record<LineKind, readonly string[]>>>;
  readonly leastCapitals: number;
}

/** A page that is more than one sheet of tables. */
const isPlan = ({ layers }: Page): boolean => layers.some(({ name }) => name !== 'sheet');

type ByKind = Partial<Record<LineKind, string[]>>;

const byKind = (pages: readonly Page[]): ByKind => {
  const found: ByKind = {};
  for (const page of pages)
    for (const { text, kinds } of textsOnLines(page))
      for (const kind of kinds) (found[kind] ??= []).push(`${page.title}: ${text}`);
  return found;
};

const leaves = (page: Page): string[] => {
  const { x, y, width, height } = sheetFrame(page.paper).outer;
  return textsOf(pageAtoms(page))
    .filter((text) =>
      corners(textBox(text)).some(
        (corner) => corner.x < x || corner.x > x + width || corner.y < y || corner.y > y + height,
      ),
    )
    .map(({ text }) => `${page.title}: ${text}`);
};

/** Checks every atom of some pages. */
export const sheetFigures = (pages: readonly Page[]): SheetFigures => {
  const texts = pages.flatMap((page) => textsOf(pageAtoms(page)));
  return {
    pages: pages.length,
    texts: texts.length,
    overlaps: pages.flatMap((page) =>
      overlapsOf(pageAtoms(page)).map((pair) => `${page.title}: ${pair}`),
    ),
    outside: pages.flatMap(leaves),
    onPlans: byKind(pages.filter(isPlan)),
    onOthers: byKind(pages.filter((page) => !isPlan(page))),
    leastCapitals: texts.reduce(
      (least, { size }) => Math.min(least, size * letterExtent.capital),
      Infinity,
    ),
  };
};
