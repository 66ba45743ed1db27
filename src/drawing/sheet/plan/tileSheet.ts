import type { Layout } from '../../../engine/layout.ts';
import type { LengthSystem } from '../../../units/lengthStyle.ts';
import type { DrawnLayer } from '../../drawOnPaper.ts';
import type { Rect } from '../rect.ts';
import { keyPlan, type KeyPlan } from './keyPlan.ts';
import { matchLines } from './matchLines.ts';
import type { PlanTiles } from './planTiles.ts';
import { planFoot, scaledPlan, type ScaledPlan } from './scaledPlan.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** Room round a part for its chains and for what lies beyond its match lines, paper inches. */
const roundTile = 0.85;

/** The row under a part is so high: its key plan needs more than words; paper inches. */
const rowHeight = 1.15;
const keyWidth = 2.4;
const beside = 0.1;

const windowIn = (content: Rect): Rect => ({ ...content, height: content.height - rowHeight });

/** What a sheet has for the ground of a part between its match lines, paper inches. */
export const tileRoom = (content: Rect) => {
  const { width, height } = windowIn(content);
  return { width: width - 2 * roundTile, height: height - 2 * roundTile };
};

/** The whole plan on the ground, the content of the sheet (paper inches), and the units of the site. */
export interface TileOf {
  readonly drawn: readonly DrawnLayer[];
  readonly content: Rect;
  readonly system: LengthSystem;
}

/** Which part a sheet is of, the numbers of the sheets of all, and of that of the whole. */
export interface TilePlace {
  readonly n: number;
  readonly sheets: readonly number[];
  readonly whole: number;
}

/** A part of a plan as it stands on its sheet. */
export interface TileSheet extends ScaledPlan {
  readonly key: KeyPlan;
}

/**
 * One part of a plan in the content of a sheet: to the scale of all parts, with match lines to its
 * neighbours, and a key plan beside its scale.
 */
export const tileSheet = (
  layout: Layout,
  { drawn, content, system }: TileOf,
  { scale, tiles }: PlanTiles,
  { n, sheets, whole }: TilePlace,
): TileSheet => {
  const tile = tiles[n];
  if (tile === undefined) throw new RangeError(`expected a part of the plan, found none at ${n}`);
  const window = windowIn(content);
  const room = {
    x: content.x + content.width - keyWidth,
    y: window.y + window.height + beside,
    width: keyWidth,
    height: rowHeight - beside,
  };
  const edges = { name: 'sheet', primitives: matchLines(tile, tiles, sheets) } as const;
  const place = {
    drawn: [...drawn, edges],
    system,
    window,
    clear: roundTile,
    view: { bounds: tile.bounds, scale },
    taken: keyWidth + beside,
    leastField: planFoot / 2,
  };
  const plan = scaledPlan(place, () => [
    phrase`A part of the plan: the whole, and the key to its signs, on sheet ${whole}.`,
  ]);
  return { ...plan, key: keyPlan(layout, tiles, { sheets, here: n }, room) };
};
