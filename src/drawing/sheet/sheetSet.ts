import { noPriceList } from '../../engine/price/customerPrice.ts';
import type { Layout } from '../../engine/layout.ts';
import { boundsOf } from '../../geometry/bounds.ts';
import { corners } from '../../geometry/orientedBox.ts';
import { checkValue } from '../../site/checkValue.ts';
import type { GateId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import type { DrawnLayer } from '../drawOnPaper.ts';
import type { Lead } from '../lettering/lettered.ts';
import type { DetailSheets } from '../plan/drawBubbles.ts';
import { proposal } from '../proposal/proposal.ts';
import { cover } from './cover/cover.ts';
import { indexEntries } from './cover/sheetIndex.ts';
import type { Stack } from './flow/block.ts';
import {
  columnsIn,
  pagePlaces,
  paginate,
  type FilledPage,
  type PagePlaces,
} from './flow/paginate.ts';
import type { Layer } from '../layer.ts';
import type { Link, Page } from './page.ts';
import { laid, type Orientation, type Paper } from './papers.ts';
import { planAnchor } from './plan/planAnchor.ts';
import {
  leftOnAll,
  planCount,
  planDrawing,
  planPages,
  type PlanDrawing,
  type PlanPage,
} from './plan/planPages.ts';
import { planScale, printedPlan } from './plan/planSheet.ts';
import { cautionsSection } from './sections/cautionsSection.ts';
import { flagsPart, partsFor } from './setParts.ts';
import { sheetFrame } from './sheetFrame.ts';
import type { SheetOptions } from './sheetOptions.ts';
import { titleBlocks } from './titleBlocks.ts';
import { phrase } from '../../phrases/phrase.ts';
import { language } from '../../phrases/speak.ts';

/** What stands in the frame of one sheet, and what the index calls it. */
interface Draft {
  readonly paper: Paper;
  readonly title: string;
  readonly indexed: string;
  readonly layers: readonly Layer[];
  readonly leads: readonly Lead[];
  readonly links: readonly Link[];
}

/** How much of a set is done: so many of its drawn sheets. */
export interface SetProgress {
  readonly done: number;
  readonly of: number;
}

/** The cover is sheet 1, the whole plan the next. */
const planFirst = 2;

const chosenPaper = (
  site: Site,
  layout: Layout,
  drawn: readonly DrawnLayer[],
  { paper, orientation }: SheetOptions,
): Paper => {
  if (orientation !== undefined) return laid(paper, orientation);
  const ratio = (way: Orientation): number =>
    planScale(site, layout, sheetFrame(laid(paper, way)).content, drawn).ratio;
  return laid(paper, ratio('portrait') < ratio('landscape') ? 'portrait' : 'landscape');
};

/** Where lists have by so much more column on paper that lies the other way than plans, they turn it; ours. */
const worthTurning = 1.25;

const columnHeight = (paper: Paper): number => {
  const { count, height } = columnsIn(sheetFrame(paper).content);
  return count * height;
};

/** The paper of the lists: as that of the plan, unless no way was chosen and the other has far more column. */
const listPaper = (plan: Paper, { paper, orientation }: SheetOptions): Paper => {
  if (orientation !== undefined) return plan;
  const turned = laid(paper, plan.width > plan.height ? 'portrait' : 'landscape');
  return columnHeight(turned) > worthTurning * columnHeight(plan) ? turned : plan;
};

/** Stacks of a part; links find where it begins by its name. */
const named = (part: string, stacks: readonly Stack[]): Stack[] =>
  stacks.map((stack, n) => ({ ...stack, part, ...(n === 0 ? { anchor: part } : {}) }));

/** Parts of a set as one title: `Openings, tapes and holes`. */
const partsTitle = ([first = '', ...rest]: readonly string[]): string =>
  [first, ...rest.map((part) => part.charAt(0).toLowerCase() + part.slice(1))].join(', ');

const listDraft = (paper: Paper, { parts, atoms }: FilledPage): Draft => {
  const title = partsTitle(parts);
  const layers = [{ name: 'sheet', atoms }] as const;
  return { paper, title, indexed: title, layers, leads: [], links: [] };
};

/** The sheet that each anchor stands on: lists begin at sheet `first`. */
const anchorsOf = (pages: readonly PagePlaces[], first: number): ReadonlyMap<string, number> =>
  new Map(pages.flatMap(({ anchors }, n) => anchors.map((anchor) => [anchor, first + n] as const)));

const detailsOf = ({ gates }: Layout, anchors: ReadonlyMap<string, number>): DetailSheets =>
  new Map(
    (Object.keys(gates) as GateId[]).flatMap((id) => {
      const sheet = anchors.get(id);
      return sheet === undefined ? [] : [[id, sheet] as const];
    }),
  );

/** Letters that lead on as links of their page; what is not in this set leads nowhere. */
const linksOf = (leads: readonly Lead[], anchors: ReadonlyMap<string, number>): Link[] =>
  leads.flatMap(({ to, box }) => {
    const page = anchors.get(to);
    const bounds = boundsOf(corners(box));
    if (page === undefined || bounds === null) return [];
    const { minX: x, minY: y, maxX, maxY } = bounds;
    return [{ page, rect: { x, y, width: maxX - x, height: maxY - y } }];
  });

const noPrices = { price: noPriceList, others: [] } as const;

/** The page that a rep hands to the customer, the last of a rep's set. */
const customerPages = (site: Site, layout: Layout, options: SheetOptions, paper: Paper): Page[] => {
  if (options.reader !== 'rep') return [];
  const orientation = paper.width > paper.height ? 'landscape' : 'portrait';
  return [proposal(site, layout, { prices: noPrices, ...options, orientation })];
};

/** The sheets after the cover, lettered one after the other, and where their anchors stand. */
function* draftsOf(
  site: Site,
  layout: Layout,
  options: SheetOptions,
  { drawing, paper }: { readonly drawing: PlanDrawing; readonly paper: Paper },
): Generator<
  SetProgress,
  { readonly drafts: readonly Draft[]; readonly anchors: ReadonlyMap<string, number> }
> {
  const listed = listPaper(paper, options);
  const { content } = sheetFrame(listed);
  const column = columnsIn(content);
  const count = planCount(drawing);
  yield { done: 0, of: count + 1 };
  const stacks = partsFor(options.reader ?? null).flatMap(({ name, stacks: of }) =>
    named(name, of(site, layout, column)),
  );
  const first = planFirst + count;
  // the cautions come last: what they tell of the plan moves nothing before them
  const known = pagePlaces(stacks, content);
  const anchors = new Map([
    ...anchorsOf(known, first),
    ...Array.from({ length: count }, (_, n) => [planAnchor(planFirst + n), planFirst + n] as const),
  ]);
  const refers = {
    first: planFirst,
    details: detailsOf(layout, anchors),
    flags: anchors.get(flagsPart) ?? null,
  };
  const plans: PlanPage[] = [];
  for (const page of planPages(site, layout, drawing, refers)) {
    plans.push(page);
    yield { done: plans.length, of: count + 1 };
  }
  const cautions = named(phrase`Cautions`, cautionsSection(site, leftOnAll(plans), column.width));
  const lists = paginate([...stacks, ...cautions], content).map((page) => listDraft(listed, page));
  return { drafts: [...plans.map((page) => ({ ...page, paper })), ...lists], anchors };
}

/**
 * The whole crew sheet, as many pages as it needs, each with its title block: a cover, the plan, its parts
 * where the whole is small, then what the reader needs of openings, tapes with the holes, ties, load list,
 * flags, how the plan was measured, structure, rules of towns, the form for what was set, notes and cautions; for a rep also the
 * page for the customer. Says between its sheets how much is done.
 */
export function* sheetSteps(
  site: Site,
  layout: Layout,
  options: SheetOptions,
): Generator<SetProgress, readonly Page[]> {
  const plan = printedPlan(site, layout);
  const paper = chosenPaper(site, layout, plan, options);
  const frame = sheetFrame(paper);
  const drawing = planDrawing(site, layout, frame.content, plan);
  const { drafts, anchors } = yield* draftsOf(site, layout, options, { drawing, paper });
  const customer = customerPages(site, layout, options, paper);
  const entries = indexEntries(
    [...drafts.map(({ indexed }) => indexed), ...customer.map(() => phrase`Page for the customer`)],
    planFirst,
  );
  const of = { reader: options.reader ?? null, entries, flags: anchors.get(flagsPart) ?? null };
  const front = cover(site, layout, of, frame.content);
  const all: readonly Draft[] = [
    { ...front, paper, title: phrase`Cover`, indexed: phrase`Cover`, leads: [] },
    ...drafts,
  ];
  const check = checkValue(options.siteText);
  const total = all.length + customer.length;
  const known = new Map<Paper, ReturnType<typeof titleBlocks>>();
  const blocksOn = (own: Paper): ReturnType<typeof titleBlocks> => {
    const blocks = known.get(own) ?? titleBlocks(sheetFrame(own), site, { of: total, check });
    known.set(own, blocks);
    return blocks;
  };
  const sheets = all.map(({ paper: own, title, layers, leads, links }, n): Page => {
    const number = n + 1;
    return {
      title: `${number} ${title}`,
      paper: own,
      layers: [...layers, { name: 'sheet', atoms: blocksOn(own)({ title, number }) }],
      links: [...links, ...linksOf(leads, anchors)],
      language: language(),
    };
  });
  return [
    ...sheets,
    ...customer.map((page, n) => ({
      ...page,
      title: `${all.length + n + 1} ${phrase`Page for the customer`}`,
    })),
  ];
}

/** The pages of `sheetSteps` at once. */
export const sheetSet = (site: Site, layout: Layout, options: SheetOptions): readonly Page[] => {
  const steps = sheetSteps(site, layout, options);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
};
