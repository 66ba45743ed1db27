import type { Layout } from '../../../engine/layout.ts';
import type { Site } from '../../../site/site.ts';
import { radians } from '../../../units/radians.ts';
import type { DrawnLayer } from '../../drawOnPaper.ts';
import type { Lead } from '../../lettering/lettered.ts';
import { drawBubbles, type DetailSheets } from '../../plan/drawBubbles.ts';
import type { Primitive } from '../../primitive.ts';
import { letters } from '../letters.ts';
import type { Layer } from '../../layer.ts';
import type { Link } from '../page.ts';
import type { Rect } from '../rect.ts';
import { groundBounds } from '../../groundBounds.ts';
import { planAnchor } from './planAnchor.ts';
import { planKey, planScale, planSheet } from './planSheet.ts';
import { planTiles, type PlanTile, type PlanTiles } from './planTiles.ts';
import { tileRoom, tileSheet } from './tileSheet.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** A plan on a sheet before it has a title block: what leads elsewhere, and what found no room. */
export interface PlanPage {
  readonly title: string;
  /** What an index calls it: the parts of a plan are one entry. */
  readonly indexed: string;
  readonly layers: readonly Layer[];
  readonly leads: readonly Lead[];
  readonly links: readonly Link[];
  readonly left: readonly string[];
}

/** What the plan of a site is drawn from, once for all of its sheets. */
export interface PlanDrawing {
  readonly content: Rect;
  readonly drawn: readonly DrawnLayer[];
  readonly tiles: PlanTiles | null;
}

/** Sheets that a plan refers to: its own first, those of gate details, that of the flags. */
export interface PlanRefers {
  readonly first: number;
  readonly details: DetailSheets;
  readonly flags: number | null;
}

/** The plan of a site (`drawn`) on sheets with a content, and in which parts it is drawn besides the whole. */
export const planDrawing = (
  site: Site,
  layout: Layout,
  content: Rect,
  drawn: readonly DrawnLayer[],
): PlanDrawing => {
  const fence = drawn.flatMap(({ name, primitives }) => (name === 'fence' ? primitives : []));
  const ground = groundBounds(fence);
  const whole = planScale(site, layout, content, drawn);
  const { system } = site.lengths;
  const tiles =
    ground === null ? null : planTiles(layout, ground, tileRoom(content), { whole, system });
  return { content, drawn, tiles };
};

/** How many sheets the plan takes: the whole, and its parts. */
export const planCount = ({ tiles }: PlanDrawing): number => 1 + (tiles?.tiles.length ?? 0);

/** The outline of a part on the plan of the whole, with the number of its sheet. */
const partOutline = ({ bounds }: PlanTile, sheet: number): Primitive[] => {
  const { minX, minY, maxX, maxY } = bounds;
  const points = [
    { x: minX, y: minY },
    { x: maxX, y: minY },
    { x: maxX, y: maxY },
    { x: minX, y: maxY },
  ];
  return [
    { kind: 'polyline', points, closed: true, pen: 'guide' },
    {
      kind: 'text',
      at: { x: (minX + maxX) / 2, y: (minY + maxY) / 2 },
      text: phrase`sheet ${sheet}`,
      size: letters.small,
      rise: 0,
      angle: radians(0),
      ink: 'dimension',
      weight: 'bold',
      far: 'leave out',
      name: '',
      to: planAnchor(sheet),
    },
  ];
};

/** Bubbles find their places before the names of the yard, and after those of posts and gates. */
const withBubbles = (
  drawn: readonly DrawnLayer[],
  layout: Layout,
  details: DetailSheets,
): DrawnLayer[] => {
  const at = drawn.findIndex(({ name }) => name === 'names');
  const bubbles = { name: 'names', primitives: drawBubbles(layout, details) } as const;
  return drawn.toSpliced(at < 0 ? drawn.length : at, 0, bubbles);
};

/** The numbers of the sheets of parts, after that of the whole. */
const sheetsOf = ({ tiles }: PlanTiles, first: number): number[] =>
  tiles.map((_, n) => first + 1 + n);

/** The whole plan on its sheet, with the outlines of its parts. */
const wholePage = (
  site: Site,
  layout: Layout,
  { content, drawn, tiles }: PlanDrawing,
  { first, details, flags }: PlanRefers,
): PlanPage => {
  const sheets = tiles === null ? [] : sheetsOf(tiles, first);
  const parts = sheets.flatMap((sheet, n) => {
    const tile = tiles?.tiles[n];
    return tile === undefined ? [] : partOutline(tile, sheet);
  });
  const plan = planSheet(site, layout, content, [
    { name: 'sheet', primitives: parts },
    ...withBubbles(drawn, layout, details),
  ]);
  const key = planKey(site, layout, content, flags);
  const title = tiles === null ? phrase`Plan` : phrase`Plan, whole`;
  return {
    title,
    indexed: title,
    layers: [...plan.layers, { name: 'sheet', atoms: key }],
    leads: plan.leads,
    links: [],
    left: plan.left,
  };
};

/** One part of the plan on its sheet; the sheet of the whole comes before the parts. */
const partPage = (
  site: Site,
  layout: Layout,
  { content, drawn, tiles }: PlanDrawing & { readonly tiles: PlanTiles },
  { first, details, n }: PlanRefers & { readonly n: number },
): PlanPage => {
  const sheets = sheetsOf(tiles, first);
  const { system } = site.lengths;
  const what = { drawn: withBubbles(drawn, layout, details), content, system };
  const { key, ...part } = tileSheet(layout, what, tiles, { n, sheets, whole: first });
  return {
    title: phrase`Plan, part ${n + 1} of ${sheets.length}`,
    indexed: phrase`Plan, in parts`,
    layers: [...part.layers, { name: 'sheet', atoms: key.atoms }],
    leads: part.leads,
    links: key.links,
    left: part.left,
  };
};

/** The sheets of a plan one after the other, each lettered when it is asked for. */
export function* planPages(
  site: Site,
  layout: Layout,
  drawing: PlanDrawing,
  refers: PlanRefers,
): Generator<PlanPage> {
  yield wholePage(site, layout, drawing, refers);
  const { tiles } = drawing;
  if (tiles === null) return;
  for (const n of tiles.tiles.keys())
    yield partPage(site, layout, { ...drawing, tiles }, { ...refers, n });
}

/** What no sheet of a plan had room for. */
export const leftOnAll = ([first, ...rest]: readonly PlanPage[]): readonly string[] => {
  const others = rest.map(({ left }) => new Set(left));
  return (first?.left ?? []).filter(
    (text) => text !== '' && others.every((left) => left.has(text)),
  );
};
