import type { Layout } from '../../engine/layout.ts';
import type { Site } from '../../site/site.ts';
import type { Atom } from '../atom.ts';
import { checkValue } from '../../site/checkValue.ts';
import { heading } from '../sheet/flow/heading.ts';
import { layTable } from '../sheet/flow/layTable.ts';
import { columnsIn, paginate } from '../sheet/flow/paginate.ts';
import type { Stack } from '../sheet/flow/block.ts';
import { under } from '../sheet/flow/stacks.ts';
import { letters } from '../sheet/letters.ts';
import { lineOfText } from '../sheet/lineOfText.ts';
import type { Page } from '../sheet/page.ts';
import { laid } from '../sheet/papers.ts';
import type { Rect } from '../sheet/rect.ts';
import { sheetFrame } from '../sheet/sheetFrame.ts';
import type { SheetOptions } from '../sheet/sheetOptions.ts';
import { titleBlocks } from '../sheet/titleBlocks.ts';
import { orderTables, signTable } from './orderTables.ts';
import { unsignedGates } from './unsignedGates.ts';
import { phrase, phraseOf } from '../../phrases/phrase.ts';
import { language } from '../../phrases/speak.ts';

/** Height of the line over a page that is not signed, paper inches. */
const markHeight = 0.36;

const mark = ({ x, y, width }: Rect, names: readonly string[]): Atom[] => [
  ...lineOfText(phrase`UNSIGNED: ${names.join(', ')}`, x, y + 0.14, {
    size: letters.heading,
    weight: 'bold',
    ink: 'stop',
    width,
  }),
];

const stacksOf = (site: Site, layout: Layout, width: number): Stack[] => {
  const [first, ...rest] = [...orderTables(site, layout), signTable(site, layout)].map((table) =>
    layTable(table, width),
  );
  if (first === undefined) return [];
  return [under(heading(phrase`Order of leaves and hardware`, width), first), ...rest];
};

/**
 * The order sheet: leaves, hinges, latches and closers for every gate, then the openings with who
 * signed them, on paper as the crew sheet is; upright unless said. While any gate is unsigned every
 * page is marked with it.
 */
export const orderSheet = (site: Site, layout: Layout, options: SheetOptions): readonly Page[] => {
  const paper = laid(options.paper, options.orientation ?? 'portrait');
  const frame = sheetFrame(paper);
  const { content } = frame;
  const unsigned = unsignedGates(site, layout);
  const top = unsigned.length === 0 ? 0 : markHeight;
  const room = { ...content, y: content.y + top, height: content.height - top };
  const pages = paginate(stacksOf(site, layout, columnsIn(room).width), room);
  const title = unsigned.length === 0 ? phrase`Order` : phrase`Order, UNSIGNED`;
  const blocks = titleBlocks(frame, site, {
    of: pages.length,
    check: checkValue(options.siteText),
    sort: phraseOf('brand')`order sheet`,
  });
  return pages.map(({ atoms }, n) => ({
    title: `${n + 1} ${title}`,
    paper,
    layers: [
      {
        name: 'sheet',
        atoms: [
          ...(unsigned.length === 0 ? [] : mark(content, unsigned)),
          ...atoms,
          ...blocks({ title, number: n + 1 }),
        ],
      },
    ],
    links: [],
    language: language(),
  }));
};
