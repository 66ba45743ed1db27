import type { Atom } from '../drawing/atom.ts';
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

/** The part of the paper to be painted: its pixels on the pad, and which pieces are on it. */
interface Part {
  readonly area: { left: number; top: number; right: number; bottom: number };
  readonly sees: (piece: PaperPiece) => boolean;
}

const layers: readonly ((piece: PaperPiece) => readonly Atom[])[] = [
  ({ marks }) => marks,
  ({ lines }) => lines,
  ({ texts }) => texts,
];

/** Whole pixels, so that no edge of a part shows. */
const partOf = (
  paper: Bounds,
  { x, y, inch }: { readonly x: number; readonly y: number; readonly inch: number },
  whole: Part['area'],
): Part => {
  const area = {
    left: Math.max(whole.left, Math.floor(paper.minX * inch + x)),
    top: Math.max(whole.top, Math.floor(paper.minY * inch + y)),
    right: Math.min(whole.right, Math.ceil(paper.maxX * inch + x)),
    bottom: Math.min(whole.bottom, Math.ceil(paper.maxY * inch + y)),
  };
  const near = {
    minX: (area.left - x) / inch - overInk,
    minY: (area.top - y) / inch - overInk,
    maxX: (area.right - x) / inch + overInk,
    maxY: (area.bottom - y) / inch + overInk,
  };
  return { area, sees: ({ bounds }) => bounds !== null && boundsOverlap(bounds, near) };
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
  const { view, pad } = picture;
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
    const { area, sees } = partOf(paper, { x, y, inch }, whole);
    if (area.right <= area.left || area.bottom <= area.top) continue;
    onSnapshot(picture, (context) => {
      context.beginPath();
      context.rect(area.left, area.top, area.right - area.left, area.bottom - area.top);
      context.clip();
      context.clearRect(area.left, area.top, area.right - area.left, area.bottom - area.top);
      paintGrid(context, { view, area, palette, over, ruling: rulingFor(view.scale, system) });
      context.translate(x, y);
      const pieces = drawing.pieces.filter(sees);
      for (const atomsOf of layers)
        for (const piece of pieces) paintAtoms(context, atomsOf(piece), { palette, scale: inch });
    });
  }
};
