import { boundsOverlap, expandBounds, type Bounds } from '../../geometry/bounds.ts';
import { boxShape, type BoxShape } from '../../geometry/boxShape.ts';
import type { OrientedBox } from '../../geometry/orientedBox.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import { shapesOverlap } from '../../geometry/shapesOverlap.ts';
import { weigh, type Enough } from './coverCost.ts';
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

/** Something that takes room, which can be given back. */
export interface Held {
  readonly giveBack: () => void;
}

/** Room for letters of which parts can be given back, and that can be looked at through another window. */
export interface HeldLettering extends Lettering {
  /** Notes from here on what takes room: in `into`, or nowhere any more. */
  readonly note: (into: Held[] | null) => void;
  /** Nothing is placed outside another window from here on; what lay outside the one before was never kept clear. */
  readonly lookThrough: (window: Bounds | null, shown: Bounds | null) => void;
}

/** Whether a text lies on a line that is not broken for it; lines of chains and leaders are, if need be. */
const liesOnSolid = ({ solid, heavy }: Covered): boolean => solid + heavy > 0;
const onSolid: Enough = { cost: { thin: 0, chain: 0, solid: 1, heavy: 1, leader: 0 }, limit: 0 };

/** Side of a cell of the search grid, paper inches. */
const cell = 0.5;
/** The least distance between two texts, and how far beyond the window lines are kept clear; paper inches. */
const gap = 0.04;
const beyond = 0.5;

interface Kept {
  readonly shape: BoxShape;
  readonly weight: Weight;
  /** The search that met it last: it may lie in several cells. */
  met: number;
}

/** Cells of one row of the grid, so that a cell has one number; no sheet is that wide. */
const row = 1 << 20;

const nothing: readonly Kept[] = [];

/** Boxes in cells, so that only neighbours are compared. */
const makeGrid = () => {
  const cells = new Map<number, Kept[]>();
  let search = 0;
  const add = (shape: BoxShape, weight: Weight = 'thin'): Kept => {
    const kept = { shape, weight, met: 0 };
    const { minX, minY, maxX, maxY } = shape;
    for (let x = Math.floor(minX / cell); x <= Math.floor(maxX / cell); x++)
      for (let y = Math.floor(minY / cell); y <= Math.floor(maxY / cell); y++) {
        const there = cells.get(x * row + y);
        if (there === undefined) cells.set(x * row + y, [kept]);
        else there.push(kept);
      }
    return kept;
  };
  const drop = (kept: Kept): void => {
    const { minX, minY, maxX, maxY } = kept.shape;
    for (let x = Math.floor(minX / cell); x <= Math.floor(maxX / cell); x++)
      for (let y = Math.floor(minY / cell); y <= Math.floor(maxY / cell); y++) {
        const there = cells.get(x * row + y);
        const at = there?.indexOf(kept) ?? -1;
        if (at >= 0) there?.splice(at, 1);
      }
  };
  /** Goes through what comes within `margin` of a shape until `seen` says that it is enough. */
  const touching = (
    shape: BoxShape,
    margin: number,
    seen: (kept: Kept) => 'go on' | 'enough',
  ): void => {
    const over = margin * (Math.abs(shape.cos) + Math.abs(shape.sin));
    const lastX = Math.floor((shape.maxX + over) / cell);
    const lastY = Math.floor((shape.maxY + over) / cell);
    search += 1;
    for (let x = Math.floor((shape.minX - over) / cell); x <= lastX; x++)
      for (let y = Math.floor((shape.minY - over) / cell); y <= lastY; y++)
        for (const kept of cells.get(x * row + y) ?? nothing) {
          if (kept.met === search) continue;
          kept.met = search;
          if (shapesOverlap(kept.shape, shape, margin) && seen(kept) === 'enough') return;
        }
  };
  const isClear = (shape: BoxShape, margin: number): boolean => {
    let clear = true;
    touching(shape, margin, () => {
      clear = false;
      return 'enough';
    });
    return clear;
  };
  const count = (shape: BoxShape, enough?: Enough): Covered => {
    const sum = { thin: 0, chain: 0, solid: 0, heavy: 0, leader: 0 };
    touching(shape, 0, ({ weight }) => {
      sum[weight] += 1;
      const lost = enough !== undefined && weigh(sum, enough.cost) > enough.limit;
      return lost ? 'enough' : 'go on';
    });
    return sum;
  };
  const countAll = (shape: BoxShape): number => {
    let sum = 0;
    touching(shape, 0, () => {
      sum += 1;
      return 'go on';
    });
    return sum;
  };
  return { add, drop, isClear, count, countAll };
};

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
  const texts = makeGrid();
  const drawn = makeGrid();
  // leaders are among what is drawn, and are asked for alone
  const leaders = makeGrid();
  let edge = window;
  let inSight = shown;
  let notes: Held[] | null = null;
  const add = (grid: typeof texts, shape: BoxShape, weight?: Weight): void => {
    const kept = grid.add(shape, weight);
    notes?.push({ giveBack: () => grid.drop(kept) });
  };
  for (const box of taken) texts.add(boxShape(box));
  const within = (bounds: Bounds | null, { x, y }: PaperPoint): boolean =>
    bounds === null ||
    (x >= bounds.minX && x <= bounds.maxX && y >= bounds.minY && y <= bounds.maxY);
  const sees = (point: PaperPoint): boolean => within(edge, point);
  // a place is asked about in several ways, one after the other
  let asked: PaperBox | null = null;
  let shapeAsked: BoxShape | null = null;
  const shapeOf = (box: PaperBox): BoxShape => {
    if (shapeAsked !== null && asked === box) return shapeAsked;
    const shape = boxShape(box);
    asked = box;
    shapeAsked = shape;
    return shape;
  };
  const inside = ({ minX, minY, maxX, maxY }: Bounds): boolean =>
    edge === null ||
    (minX >= edge.minX && minY >= edge.minY && maxX <= edge.maxX && maxY <= edge.maxY);
  const standsClear = (shape: BoxShape): boolean =>
    thin === 'whole' || !liesOnSolid(drawn.count(shape, onSolid));
  return {
    sees,
    thin,
    shows: (point) => within(inSight, point),
    isFree: (box) => {
      const shape = shapeOf(box);
      return inside(shape) && texts.isClear(shape, gap) && standsClear(shape);
    },
    reaches: (bounds) => edge === null || boundsOverlap(bounds, edge),
    crosses: (strip) => texts.countAll(shapeOf(strip)),
    leaders: (strip) => leaders.countAll(shapeOf(strip)),
    covers: (box, enough) => drawn.count(shapeOf(box), enough),
    take: (box) => add(texts, shapeOf(box)),
    // what lies outside is never lettered over, and a line a mile long would fill the grid
    avoid: (box, weight) => {
      const shape = boxShape(box);
      if (edge !== null && !boundsOverlap(shape, expandBounds(edge, beyond))) return;
      add(drawn, shape, weight);
      if (weight === 'leader') add(leaders, shape, weight);
    },
    note: (into) => {
      notes = into;
    },
    lookThrough: (next, sight) => {
      edge = next;
      inSight = sight;
    },
  };
};

/** Room to try several texts in together: nothing is taken until `keep` is called. */
export const trial = (room: Lettering): Lettering & { readonly keep: () => void } => {
  const texts: { readonly box: PaperBox; readonly shape: BoxShape }[] = [];
  const lines: {
    readonly box: PaperBox;
    readonly shape: BoxShape;
    readonly weight: Weight;
  }[] = [];
  const crossed = (box: PaperBox): number => {
    if (texts.length === 0) return 0;
    const shape = boxShape(box);
    return texts.filter((other) => shapesOverlap(other.shape, shape)).length;
  };
  return {
    ...room,
    isFree: (box) => room.isFree(box) && crossed(box) === 0,
    crosses: (strip) => room.crosses(strip) + crossed(strip),
    leaders: (strip) => {
      const own = lines.filter(({ weight }) => weight === 'leader');
      if (own.length === 0) return room.leaders(strip);
      const shape = boxShape(strip);
      return room.leaders(strip) + own.filter((other) => shapesOverlap(other.shape, shape)).length;
    },
    covers: (box, enough) => {
      const under = room.covers(box, enough);
      if (lines.length === 0) return under;
      const [sum, shape] = [{ ...under }, boxShape(box)];
      for (const line of lines) if (shapesOverlap(line.shape, shape)) sum[line.weight] += 1;
      return sum;
    },
    take: (box) => texts.push({ box, shape: boxShape(box) }),
    avoid: (box, weight = 'thin') => lines.push({ box, shape: boxShape(box), weight }),
    keep: () => {
      for (const { box } of texts) room.take(box);
      for (const { box, weight } of lines) room.avoid(box, weight);
    },
  };
};
