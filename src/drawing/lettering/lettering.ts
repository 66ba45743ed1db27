import { boundsOf, boundsOverlap, expandBounds, type Bounds } from '../../geometry/bounds.ts';
import { boxesOverlap } from '../../geometry/boxesOverlap.ts';
import { corners, type OrientedBox } from '../../geometry/orientedBox.ts';
import type { PaperPoint } from '../../geometry/point.ts';

type PaperBox = OrientedBox<'paper'>;

/** The room for letters on a piece of paper: what is taken, and what is better kept clear. */
export interface Lettering {
  /** True for a point inside the window. */
  readonly sees: (point: PaperPoint) => boolean;
  /** True where a text would lie inside the window and touch no other text. */
  readonly isFree: (box: PaperBox) => boolean;
  /** How many drawn things a text would lie on; they may be lettered over if need be. */
  readonly covers: (box: PaperBox) => number;
  /** Takes the room: no text may come here any more. */
  readonly take: (box: PaperBox) => void;
  /** Marks something drawn that letters had better not lie on. */
  readonly avoid: (box: PaperBox) => void;
}

/** Side of a cell of the search grid, and the least distance between two texts; paper inches. */
const cell = 0.5;
const gap = 0.04;

const boundsOfBox = (box: PaperBox): Bounds =>
  boundsOf(corners(box)) ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 };

interface Kept {
  readonly box: PaperBox;
  readonly bounds: Bounds;
}

/** Boxes in cells, so that only neighbours are compared. */
const makeGrid = () => {
  const cells = new Map<string, Kept[]>();
  const keysOf = ({ minX, minY, maxX, maxY }: Bounds): string[] => {
    const keys: string[] = [];
    for (let x = Math.floor(minX / cell); x <= Math.floor(maxX / cell); x++)
      for (let y = Math.floor(minY / cell); y <= Math.floor(maxY / cell); y++)
        keys.push(`${x},${y}`);
    return keys;
  };
  const add = (box: PaperBox): void => {
    const kept = { box, bounds: boundsOfBox(box) };
    for (const key of keysOf(kept.bounds)) {
      const there = cells.get(key);
      if (there === undefined) cells.set(key, [kept]);
      else there.push(kept);
    }
  };
  const touching = (box: PaperBox): Set<Kept> => {
    const bounds = boundsOfBox(box);
    const near = new Set(keysOf(bounds).flatMap((key) => cells.get(key) ?? []));
    for (const kept of near) {
      if (!boundsOverlap(kept.bounds, bounds) || !boxesOverlap(kept.box, box)) near.delete(kept);
    }
    return near;
  };
  return { add, touching };
};

/**
 * Empty room for letters, in paper inches. Nothing is placed outside `window`; none means paper
 * without end. `taken` is room that others use already.
 */
export const makeLettering = (window: Bounds | null, taken: readonly PaperBox[]): Lettering => {
  const texts = makeGrid();
  const drawn = makeGrid();
  taken.forEach(texts.add);
  const sees = ({ x, y }: PaperPoint): boolean =>
    window === null ||
    (x >= window.minX && x <= window.maxX && y >= window.minY && y <= window.maxY);
  const inside = (box: PaperBox): boolean => corners(box).every(sees);
  const grown = (box: PaperBox): PaperBox => ({
    ...box,
    halfWidth: box.halfWidth + gap,
    halfHeight: box.halfHeight + gap,
  });
  return {
    sees,
    isFree: (box) => inside(box) && texts.touching(grown(box)).size === 0,
    covers: (box) => drawn.touching(box).size,
    take: texts.add,
    // what lies outside is never lettered over, and a line a mile long would fill the grid
    avoid: (box) => {
      if (window === null || boundsOverlap(boundsOfBox(box), expandBounds(window, cell)))
        drawn.add(box);
    },
  };
};

/** Room to try several texts in together: nothing is taken until `keep` is called. */
export const trial = (room: Lettering): Lettering & { readonly keep: () => void } => {
  const tried: PaperBox[] = [];
  return {
    ...room,
    isFree: (box) => room.isFree(box) && !tried.some((other) => boxesOverlap(other, box)),
    take: (box) => tried.push(box),
    keep: () => tried.forEach(room.take),
  };
};
