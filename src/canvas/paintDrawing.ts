import type { Atom } from '../drawing/atom.ts';
import { atomsInSight } from '../drawing/atomsInSight.ts';
import type { PaperDrawing, PaperPiece } from '../drawing/paperDrawing.ts';
import { boundsOverlap, expandBounds, type Bounds } from '../geometry/bounds.ts';
import { gatheredBounds } from '../geometry/gatheredBounds.ts';
import type { View } from '../store/view.ts';
import { overPad } from './padRoom.ts';
import { paintAtoms } from './paintAtoms.ts';
import { paintGrid, rulingFor } from './paintGrid.ts';
import { onSnapshot, type Snapshot } from './snapshot.ts';
import type { Still } from './stillPicture.ts';

/** A drawing on the paper of the view `anchor`. */
interface Placed {
  readonly drawing: PaperDrawing;
  readonly anchor: View;
}

/** Pens and halos reach over what is drawn by less than this, paper inches. */
const overInk = 0.06;

/** The part of the paper to be painted: its pixels on the pad, and the paper that has ink in it. */
interface Part {
  readonly area: { left: number; top: number; right: number; bottom: number };
  readonly near: Bounds;
}

const sees = ({ near }: Part, { bounds }: PaperPiece): boolean =>
  bounds !== null && boundsOverlap(bounds, near);

/** Long runs come into a small part with a few of their posts. */
const reachesOver = ({ near }: Part, { bounds }: PaperPiece): boolean =>
  bounds !== null &&
  (bounds.minX < near.minX ||
    bounds.minY < near.minY ||
    bounds.maxX > near.maxX ||
    bounds.maxY > near.maxY);

const layers: readonly ((piece: PaperPiece) => readonly Atom[])[] = [
  ({ marks }) => marks,
  ({ lines }) => lines,
  ({ texts }) => texts,
];

/** Whole pixels of the picture, so that no edge of a part shows. */
const partOf = (
  paper: Bounds,
  { x, y, inch, density }: Readonly<Record<'x' | 'y' | 'inch' | 'density', number>>,
  whole: Part['area'],
): Part => {
  const down = (pixels: number): number => Math.floor(pixels * density) / density;
  const up = (pixels: number): number => Math.ceil(pixels * density) / density;
  const area = {
    left: Math.max(whole.left, down(paper.minX * inch + x)),
    top: Math.max(whole.top, down(paper.minY * inch + y)),
    right: Math.min(whole.right, up(paper.maxX * inch + x)),
    bottom: Math.min(whole.bottom, up(paper.maxY * inch + y)),
  };
  const near = {
    minX: (area.left - x) / inch - overInk,
    minY: (area.top - y) / inch - overInk,
    maxX: (area.right - x) / inch + overInk,
    maxY: (area.bottom - y) / inch + overInk,
  };
  return { area, near };
};

/** Parts that lie apart are painted one by one, as far as they are few: paper inches, square inches. */
const partsOf = (changed: readonly Bounds[]): readonly Bounds[] =>
  gatheredBounds(
    changed.map((bounds) => expandBounds(bounds, overInk)),
    { waste: 1, most: 12 },
  );

/**
 * Paints a drawing into a picture: all of it, or only where it has `changed` (paper inches). The ruling of the
 * paper lies under it.
 */
export const paintDrawing = (
  picture: Snapshot,
  { drawing, anchor }: Placed,
  { palette, system, inch, over }: Pick<Still, 'palette' | 'system' | 'inch' | 'over'>,
  changed: readonly Bounds[] | null,
): void => {
  const { view, pad, density } = picture;
  const [x, y] = [view.x - anchor.x, view.y - anchor.y];
  const [right, bottom] = [pad.width + overPad, pad.height + overPad];
  const whole = { left: -overPad, top: -overPad, right, bottom };
  const everywhere = {
    minX: (whole.left - x) / inch,
    minY: (whole.top - y) / inch,
    maxX: (right - x) / inch,
    maxY: (bottom - y) / inch,
  };
  for (const paper of changed === null ? [everywhere] : partsOf(changed)) {
    const part = partOf(paper, { x, y, inch, density }, whole);
    const { area, near } = part;
    if (area.right <= area.left || area.bottom <= area.top) continue;
    onSnapshot(picture, (context) => {
      context.beginPath();
      context.rect(area.left, area.top, area.right - area.left, area.bottom - area.top);
      context.clip();
      context.clearRect(area.left, area.top, area.right - area.left, area.bottom - area.top);
      paintGrid(context, { view, area, palette, over, ruling: rulingFor(view.scale, system) });
      context.translate(x, y);
      const pieces = drawing.pieces.filter((piece) => sees(part, piece));
      for (const atomsOf of layers)
        for (const piece of pieces) {
          const atoms = atomsOf(piece);
          const seen = reachesOver(part, piece) ? atomsInSight(atoms, near) : atoms;
          paintAtoms(context, seen, { palette, scale: inch });
        }
    });
  }
};
