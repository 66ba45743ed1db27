import { boundsOverlap, expandBounds, type Bounds } from '../../geometry/bounds.ts';
import { setShape, type BoxShapes } from '../../geometry/boxShapes.ts';
import type { OrientedBox } from '../../geometry/orientedBox.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import { shapesOverlap } from '../../geometry/shapesOverlap.ts';
import type { Enough } from './coverCost.ts';
import { makeShapeGrid, type ShapeGrid } from './shapeGrid.ts';
import type { PerWeight, Weight } from './weight.ts';

type PaperBox = OrientedBox<'paper'>;

/** How many drawn things of each weight a text lies on. */
export type Covered = PerWeight;

/** Which part of the paper is in sight (null for all), and whether thin lines are broken for letters. */
export interface PaperLook {
  readonly shown: Bounds | null;
  readonly thin: 'whole' | 'broken';
}

/** The room for letters on a piece of paper: what is taken, and what is better kept clear. */
export interface Lettering {
  /** What becomes of thin lines that letters lie on. */
  readonly thin: 'whole' | 'broken';
  /** True for a point inside the window. */
  readonly sees: (point: PaperPoint) => boolean;
  /** True for a point in the part of the paper that is shown: all of it unless said. */
  readonly shows: (point: PaperPoint) => boolean;
  /** True where all of a box lies in that part. */
  readonly showsAll: (box: PaperBox) => boolean;
  /**
   * True where a text would lie inside the window and touch no other text, and where thin lines are
   * broken for letters, no line that is not: a draughtsman leaves such a text out, and says where it stands.
   */
  readonly isFree: (box: PaperBox) => boolean;
  /** True where some of these bounds lies inside the window. */
  readonly reaches: (bounds: Bounds) => boolean;
  /** How many texts a line would run through; inside the window or not. */
  readonly crosses: (strip: PaperBox) => number;
  /** How many leaders a line would run across. */
  readonly leaders: (strip: PaperBox) => number;
  /** How much drawn a text would lie on, counted up to `enough`; it may be lettered over if need be. */
  readonly covers: (box: PaperBox, enough?: Enough) => Covered;
  /** Takes the room: no text may come here any more. */
  readonly take: (box: PaperBox) => void;
  /** Marks something drawn that letters had better not lie on: thin unless said. */
  readonly avoid: (box: PaperBox, weight?: Weight) => void;
}

/** The number of something that takes room, by which it is given back. */
export type Held = number;

/** Room for letters of which parts can be given back, and that can be looked at through another window. */
export interface HeldLettering extends Lettering {
  /** Notes from here on what takes room: in `into`, or nowhere any more. */
  readonly note: (into: Held[] | null) => void;
  /** Gives back the room that something takes. */
  readonly giveBack: (held: Held) => void;
  /** Nothing is placed outside another window from here on; what lay outside the one before was never kept clear. */
  readonly lookThrough: (window: Bounds | null, shown: Bounds | null) => void;
}

/** Whether a text lies on a line that is not broken for it; lines of chains and leaders are, if need be. */
const liesOnSolid = ({ solid, heavy }: Covered): boolean => solid + heavy > 0;
const onSolid: Enough = { cost: { thin: 0, chain: 0, solid: 1, heavy: 1, leader: 0 }, limit: 0 };

/** The least distance between two texts, and how far beyond the window lines are kept clear; paper inches. */
const gap = 0.04;
const beyond = 0.5;

/** The shape that was asked about last, and whose: a place is asked about in several ways, one after the other. */
const shapeAsked: BoxShapes = [];
let asked: PaperBox | null = null;

const shapeOf = (box: PaperBox): BoxShapes => {
  if (asked !== box) setShape(shapeAsked, 0, box);
  asked = box;
  return shapeAsked;
};

const within = (bounds: Bounds | null, { x, y }: PaperPoint): boolean =>
  bounds === null || (x >= bounds.minX && x <= bounds.maxX && y >= bounds.minY && y <= bounds.maxY);

const allWithin = (bounds: Bounds | null, shape: BoxShapes): boolean =>
  bounds === null ||
  ((shape[0] ?? 0) >= bounds.minX &&
    (shape[1] ?? 0) >= bounds.minY &&
    (shape[2] ?? 0) <= bounds.maxX &&
    (shape[3] ?? 0) <= bounds.maxY);

const comesNear = (bounds: Bounds, shape: BoxShapes): boolean =>
  (shape[0] ?? 0) <= bounds.maxX &&
  bounds.minX <= (shape[2] ?? 0) &&
  (shape[1] ?? 0) <= bounds.maxY &&
  bounds.minY <= (shape[3] ?? 0);

/**
 * Empty room for letters, in paper inches. Nothing is placed outside `window`; none means paper
 * without end. `taken` is room that others use already, `shown` the part that is in sight; none is
 * all of it.
 */
export const makeLettering = (
  window: Bounds | null,
  taken: readonly PaperBox[],
  { shown, thin }: PaperLook = { shown: null, thin: 'whole' },
): HeldLettering => {
  const texts = makeShapeGrid();
  const drawn = makeShapeGrid();
  // leaders are among what is drawn, and are asked for alone
  const leaders = makeShapeGrid();
  const grids = [texts, drawn, leaders] as const;
  let edge = window;
  let around = window === null ? null : expandBounds(window, beyond);
  let inSight = shown;
  let notes: Held[] | null = null;
  const add = (grid: ShapeGrid, box: PaperBox, weight: Weight): void => {
    const n = grid.add(box, weight);
    notes?.push(n * grids.length + grids.indexOf(grid));
  };
  for (const box of taken) texts.add(box, 'thin');
  const standsClear = (shape: BoxShapes): boolean =>
    thin === 'whole' || !liesOnSolid(drawn.count(shape, onSolid));
  return {
    sees: (point) => within(edge, point),
    thin,
    shows: (point) => within(inSight, point),
    showsAll: (box) => allWithin(inSight, shapeOf(box)),
    isFree: (box) => {
      const shape = shapeOf(box);
      return allWithin(edge, shape) && texts.isClear(shape, gap) && standsClear(shape);
    },
    reaches: (bounds) => edge === null || boundsOverlap(bounds, edge),
    crosses: (strip) => texts.countAll(shapeOf(strip)),
    leaders: (strip) => leaders.countAll(shapeOf(strip)),
    covers: (box, enough) => drawn.count(shapeOf(box), enough),
    take: (box) => add(texts, box, 'thin'),
    // what lies outside is never lettered over, and a line a mile long would fill the grid
    avoid: (box, weight = 'thin') => {
      if (around !== null && !comesNear(around, shapeOf(box))) return;
      add(drawn, box, weight);
      if (weight === 'leader') add(leaders, box, weight);
    },
    note: (into) => {
      notes = into;
    },
    giveBack: (held) => grids[held % grids.length]?.drop(Math.floor(held / grids.length)),
    lookThrough: (next, sight) => {
      edge = next;
      around = next === null ? null : expandBounds(next, beyond);
      inSight = sight;
    },
  };
};

/** Room to try several texts in together: nothing is taken until `keep` is called. */
export const trial = (room: Lettering): Lettering & { readonly keep: () => void } => {
  const texts: PaperBox[] = [];
  const shapes: BoxShapes = [];
  const lines: { readonly box: PaperBox; readonly weight: Weight }[] = [];
  const lineShapes: BoxShapes = [];
  const crossed = (box: PaperBox): number => {
    let sum = 0;
    for (let n = 0; n < texts.length; n++) {
      if (shapesOverlap(shapes, n, shapeOf(box))) sum += 1;
    }
    return sum;
  };
  return {
    ...room,
    isFree: (box) => room.isFree(box) && crossed(box) === 0,
    crosses: (strip) => room.crosses(strip) + crossed(strip),
    leaders: (strip) =>
      lines.reduce(
        (sum, { weight }, n) =>
          weight === 'leader' && shapesOverlap(lineShapes, n, shapeOf(strip)) ? sum + 1 : sum,
        room.leaders(strip),
      ),
    covers: (box, enough) => {
      const under = room.covers(box, enough);
      if (lines.length === 0) return under;
      const sum = { ...under };
      lines.forEach(({ weight }, n) => {
        if (shapesOverlap(lineShapes, n, shapeOf(box))) sum[weight] += 1;
      });
      return sum;
    },
    take: (box) => {
      setShape(shapes, texts.length, box);
      texts.push(box);
    },
    avoid: (box, weight = 'thin') => {
      setShape(lineShapes, lines.length, box);
      lines.push({ box, weight });
    },
    keep: () => {
      for (const box of texts) room.take(box);
      for (const { box, weight } of lines) room.avoid(box, weight);
    },
  };
};
