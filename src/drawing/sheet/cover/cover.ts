import type { Layout } from '../../../engine/layout.ts';
import type { Site } from '../../../site/site.ts';
import type { Atom } from '../../atom.ts';
import { customerPlan } from '../../proposal/customerPlan.ts';
import type { Block } from '../flow/block.ts';
import { layTable } from '../flow/layTable.ts';
import { putBlock } from '../flow/putBlock.ts';
import { stackBlocks } from '../flow/stackBlocks.ts';
import { letters } from '../letters.ts';
import { lineOfText, sizeToFit } from '../lineOfText.ts';
import type { Layer } from '../../layer.ts';
import type { Link } from '../page.ts';
import { planFoot, scaledPlan } from '../plan/scaledPlan.ts';
import type { Rect } from '../rect.ts';
import type { Reader } from '../setParts.ts';
import { countsTable, mostCounts } from '../../tables/countsTable.ts';
import { flagLines } from './flagLines.ts';
import { sheetIndex, type IndexEntry, type SheetIndex } from './sheetIndex.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** Whose set it is, the other sheets, and which of them lists the flags. */
export interface CoverOf {
  readonly reader: Reader | null;
  readonly entries: readonly IndexEntry[];
  readonly flags: number | null;
}

/** A cover in the content of its sheet. */
export interface Cover {
  readonly layers: readonly Layer[];
  readonly links: readonly Link[];
}

/** The name of the job is as large as fits of these, paper inches. */
const nameSizes = [letters.heading, 0.3, 0.38, 0.46] as const;
const headHeight = 1.08;
const gutter = 0.4;
const space = 0.22;
const rowPad = 0.025;
/** Room round the ground for the lengths beside it, paper inches. */
const clear = 0.5;
/** The picture has at least this share of the height of upright paper, and of the width of wide. */
const picture = { upright: 0.38, wide: 0.6 } as const;
/** The index has at least this height under the other blocks, paper inches: its head and a few rows. */
const leastIndex = 1.1;
/** On wider paper the blocks stand beside the picture, no wider than this. */
const mostBlocks = 7;

const setOf: Readonly<Record<Reader, string>> = {
  rep: phrase`Set for the sales rep`,
  office: phrase`Set for the office`,
  crew: phrase`Set for the crew`,
};

const head = ({ job }: Site, reader: Reader | null, { x, y, width }: Rect): Atom[] => {
  const name = job.name.trim() === '' ? phrase`Job without a name` : job.name;
  const size = sizeToFit(name, width, nameSizes, 'bold');
  const set = reader === null ? phrase`Whole set` : setOf[reader];
  return [
    ...lineOfText(name, x, y + 0.26, { size, weight: 'bold', width }),
    ...lineOfText(job.customer, x, y + 0.6, { size: letters.strong, width: width * 0.66 }),
    ...lineOfText(job.place, x, y + 0.82, { size: letters.strong, width }),
    ...lineOfText(set, x + width, y + 0.6, {
      size: letters.strong,
      weight: 'bold',
      align: 'right',
      width: width * 0.32,
    }),
  ];
};

const counts = (site: Site, layout: Layout, width: number, mostRows: number): Block => {
  const { head: top, rows } = layTable(countsTable(site, layout, mostRows), width, rowPad);
  return stackBlocks([top, ...rows]);
};

/** What is to be built and which flags stand, with as many rows as a height has room for. */
const words = (
  site: Site,
  layout: Layout,
  flags: number | null,
  { width, height }: Pick<Rect, 'width' | 'height'>,
): Block => {
  const told = flagLines(layout, flags, width);
  const withRows = (rows: number): Block =>
    stackBlocks([counts(site, layout, width, rows), { height: space, atoms: [] }, told]);
  let rows = mostCounts;
  while (rows > 1 && withRows(rows).height > height) rows -= 1;
  return withRows(rows);
};

const drawPicture = (site: Site, layout: Layout, room: Rect): readonly Layer[] =>
  scaledPlan(
    {
      drawn: [{ name: 'yard', primitives: customerPlan(site, layout) }],
      system: site.lengths.system,
      window: { ...room, height: room.height - planFoot },
      clear,
      leastField: 0.3,
    },
    () => [phrase`A picture only: build by the sheets.`],
  ).layers;

const linksAt = ({ links }: SheetIndex, { x, y }: Pick<Rect, 'x' | 'y'>): Link[] =>
  links.map(({ rect, page }) => ({ page, rect: { ...rect, x: rect.x + x, y: rect.y + y } }));

interface Placed {
  readonly picture: Rect;
  readonly atoms: readonly Atom[];
  readonly links: readonly Link[];
}

/** The picture over two columns: what is to be built with its flags, and the sheets. */
const upright = (site: Site, layout: Layout, { entries, flags }: CoverOf, room: Rect): Placed => {
  const width = (room.width - gutter) / 2;
  const most = (1 - picture.upright) * room.height - space;
  const own = words(site, layout, flags, { width, height: most });
  const index = sheetIndex(entries, width, most);
  const height = Math.max(own.height, index.height);
  const y = room.y + room.height - height;
  const beside = { x: room.x + width + gutter, y };
  return {
    picture: { ...room, height: room.height - height - space },
    atoms: [...putBlock(own, { x: room.x, y }), ...putBlock(index, beside)],
    links: linksAt(index, beside),
  };
};

/** The picture beside what is to be built, its flags, and the sheets. */
const wide = (site: Site, layout: Layout, { entries, flags }: CoverOf, room: Rect): Placed => {
  const width = Math.min(mostBlocks, (1 - picture.wide) * room.width - gutter);
  const x = room.x + room.width - width;
  const own = words(site, layout, flags, { width, height: room.height - space - leastIndex });
  const y = room.y + own.height + space;
  const index = sheetIndex(entries, width, room.height - own.height - space);
  return {
    picture: { ...room, width: room.width - width - gutter },
    atoms: [...putBlock(own, { x, y: room.y }), ...putBlock(index, { x, y })],
    links: linksAt(index, { x, y }),
  };
};

/**
 * The cover of a set in the content of its sheet: the job, a picture of the plan, what is to be built
 * and how much of it, which flags stand, and the other sheets with the way to them.
 */
export const cover = (site: Site, layout: Layout, of: CoverOf, content: Rect): Cover => {
  const room = {
    ...content,
    y: content.y + headHeight,
    height: content.height - headHeight,
  };
  const placed = (content.width > content.height ? wide : upright)(site, layout, of, room);
  return {
    layers: [
      { name: 'sheet', atoms: head(site, of.reader, content) },
      ...drawPicture(site, layout, placed.picture),
      { name: 'sheet', atoms: placed.atoms },
    ],
    links: placed.links,
  };
};
