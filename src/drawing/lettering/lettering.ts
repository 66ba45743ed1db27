import { boundsOf, boundsOverlap, expandBounds, type Bounds } from '../../geometry/bounds.ts';
import { boxesOverlap } from '../../geometry/boxesOverlap.ts';
import { corners, type OrientedBox } from '../../geometry/orientedBox.ts';
import type { PaperPoint } from '../../geometry/point.ts';
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
  /** How many texts a line would run through; inside the window or not. */
  readonly crosses: (strip: PaperBox) => number;
  /** How much drawn a text would lie on; it may be lettered over if need be. */
  readonly covers: (box: PaperBox) => Covered;
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

/** Side of a cell of the search grid, and the least distance between two texts; paper inches. */
const cell = 0.5;
const gap = 0.04;

const boundsOfBox = (box: PaperBox): Bounds =>
  boundsOf(corners(box)) ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 };

interface Kept {
  readonly box: PaperBox;
  readonly bounds: Bounds;
  readonly weight: Weight;
  /** The search that met it last: it may lie in several cells. */
  met: number;
}

/** Cells of one row of the grid, so that a cell has one number; no sheet is that wide. */
const row = 1 << 20;

/** Boxes in cells, so that only neighbours are compared. */
const makeGrid = () => {
  const cells = new Map<number, Kept[]>();
  let search = 0;
  const add = (box: PaperBox, weight: Weight = 'thin'): Kept => {
    const bounds = boundsOfBox(box);
    const kept = { box, bounds, weight, met: 0 };
    const { minX, minY, maxX, maxY } = bounds;
    for (let x = Math.floor(minX / cell); x <= Math.floor(maxX / cell); x++)
      for (let y = Math.floor(minY / cell); y <= Math.floor(maxY / cell); y++) {
        const there = cells.get(x * row + y);
        if (there === undefined) cells.set(x * row + y, [kept]);
        else there.push(kept);
      }
    return kept;
  };
  const drop = (kept: Kept): void => {
    const { minX, minY, maxX, maxY } = kept.bounds;
    for (let x = Math.floor(minX / cell); x <= Math.floor(maxX / cell); x++)
      for (let y = Math.floor(minY / cell); y <= Math.floor(maxY / cell); y++) {
        const there = cells.get(x * row + y);
        const at = there?.indexOf(kept) ?? -1;
        if (at >= 0) there?.splice(at, 1);
      }
  };
  /** Goes through what touches a box until `seen` says that it is enough. */
  const touching = (box: PaperBox, seen: (kept: Kept) => 'go on' | 'enough'): void => {
    const bounds = boundsOfBox(box);
    const { minX, minY, maxX, maxY } = bounds;
    search += 1;
    for (let x = Math.floor(minX / cell); x <= Math.floor(maxX / cell); x++)
      for (let y = Math.floor(minY / cell); y <= Math.floor(maxY / cell); y++)
        for (const kept of cells.get(x * row + y) ?? []) {
          if (kept.met === search || !boundsOverlap(kept.bounds, bounds)) continue;
          kept.met = search;
          if (boxesOverlap(kept.box, box) && seen(kept) === 'enough') return;
        }
  };
  const isClear = (box: PaperBox): boolean => {
    let clear = true;
    touching(box, () => {
      clear = false;
      return 'enough';
    });
    return clear;
  };
  const count = (box: PaperBox): Covered => {
    const sum = { thin: 0, chain: 0, solid: 0, heavy: 0, leader: 0 };
    touching(box, ({ weight }) => {
      sum[weight] += 1;
      return 'go on';
    });
    return sum;
  };
  return { add, drop, isClear, count };
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
  let edge = window;
  let inSight = shown;
  let notes: Held[] | null = null;
  const add = (grid: typeof texts, box: PaperBox, weight?: Weight): void => {
    const kept = grid.add(box, weight);
    notes?.push({ giveBack: () => grid.drop(kept) });
  };
  for (const box of taken) texts.add(box);
  const within = (bounds: Bounds | null, { x, y }: PaperPoint): boolean =>
    bounds === null ||
    (x >= bounds.minX && x <= bounds.maxX && y >= bounds.minY && y <= bounds.maxY);
  const sees = (point: PaperPoint): boolean => within(edge, point);
  const inside = (box: PaperBox): boolean => corners(box).every(sees);
  const grown = (box: PaperBox): PaperBox => ({
    ...box,
    halfWidth: box.halfWidth + gap,
    halfHeight: box.halfHeight + gap,
  });
  const standsClear = (box: PaperBox): boolean =>
    thin === 'whole' || !liesOnSolid(drawn.count(box));
  return {
    sees,
    thin,
    shows: (point) => within(inSight, point),
    isFree: (box) => inside(box) && texts.isClear(grown(box)) && standsClear(box),
    crosses: (strip) => texts.count(strip).thin,
    covers: drawn.count,
    take: (box) => add(texts, box),
    // what lies outside is never lettered over, and a line a mile long would fill the grid
    avoid: (box, weight) => {
      if (edge === null || boundsOverlap(boundsOfBox(box), expandBounds(edge, cell)))
        add(drawn, box, weight);
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
  const texts: PaperBox[] = [];
  const lines: { readonly box: PaperBox; readonly weight: Weight }[] = [];
  return {
    ...room,
    isFree: (box) => room.isFree(box) && !texts.some((other) => boxesOverlap(other, box)),
    crosses: (strip) =>
      room.crosses(strip) + texts.filter((other) => boxesOverlap(other, strip)).length,
    covers: (box) => {
      const sum = { ...room.covers(box) };
      for (const line of lines) if (boxesOverlap(line.box, box)) sum[line.weight] += 1;
      return sum;
    },
    take: (box) => texts.push(box),
    avoid: (box, weight = 'thin') => lines.push({ box, weight }),
    keep: () => {
      for (const box of texts) room.take(box);
      for (const { box, weight } of lines) room.avoid(box, weight);
    },
  };
};
