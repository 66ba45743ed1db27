import { explode } from '../drawing/explode.ts';
import type { Palette } from '../drawing/ink.ts';
import type { Primitive } from '../drawing/primitive.ts';
import type { Pad } from '../editor/view.ts';
import type { View } from '../store/view.ts';
import type { LengthSystem } from '../units/lengthStyle.ts';
import { padProjection } from './padProjection.ts';
import { paintAtoms } from './paintAtoms.ts';
import { overPad, padRoom } from './padRoom.ts';
import { paintGrid, rulingFor } from './paintGrid.ts';
import { paintPictures } from './paintPictures.ts';
import type { UnderPicture } from './underPicture.ts';

/** The still drawing and what it is painted with. */
export interface Still {
  readonly primitives: readonly Primitive[];
  readonly palette: Palette;
  readonly system: LengthSystem;
  /** CSS pixels for a paper inch. */
  readonly inch: number;
  /** False while the lettering is still loading; the picture is taken again when it is here. */
  readonly lettered: boolean;
  /** Whether pictures lie under it: then its paper is with them. */
  readonly over: 'paper' | 'pictures';
}

/** A picture of the still drawing, with a margin around the pad, as the view was then. */
export interface Snapshot {
  readonly canvas: HTMLCanvasElement;
  readonly view: View;
  readonly pad: Pad;
}

const margin = overPad;

/** A picture as large as the pad with its margin, painted by `paint` in CSS pixels of the pad. */
const taken = (
  view: View,
  pad: Pad,
  paint: (context: CanvasRenderingContext2D) => void,
): Snapshot => {
  const density = Math.min(2, window.devicePixelRatio || 1);
  const canvas = document.createElement('canvas');
  canvas.width = Math.round((pad.width + 2 * margin) * density);
  canvas.height = Math.round((pad.height + 2 * margin) * density);
  const context = canvas.getContext('2d');
  if (context === null) return { canvas, view, pad };
  context.scale(density, density);
  context.translate(margin, margin);
  paint(context);
  return { canvas, view, pad };
};

/** Paints the still drawing into a picture. */
export const takeSnapshot = (still: Still, view: View, pad: Pad): Snapshot =>
  taken(view, pad, (context) => {
    const { primitives, palette, system, inch, over } = still;
    const [right, bottom] = [pad.width + margin, pad.height + margin];
    const area = { left: -margin, top: -margin, right, bottom };
    paintGrid(context, { view, area, palette, over, ruling: rulingFor(view.scale, system) });
    const atoms = explode(primitives, padProjection(view, inch), padRoom(pad, inch));
    paintAtoms(context, atoms, { palette, scale: inch });
  });

/** What lies under the drawing, and with what it is painted. */
export interface Under {
  readonly pictures: readonly UnderPicture[];
  readonly palette: Palette;
}

/** Paints the paper and the pictures on it into a picture of their own. */
export const takeUnder = ({ pictures, palette }: Under, view: View, pad: Pad): Snapshot =>
  taken(view, pad, (context) => {
    context.fillStyle = palette.paper;
    context.fillRect(-margin, -margin, pad.width + 2 * margin, pad.height + 2 * margin);
    paintPictures(context, pictures, { view, palette });
  });

/** Paints the picture where the ground of its time is in another view. */
export const showSnapshot = (
  context: CanvasRenderingContext2D,
  { canvas, view: then, pad }: Snapshot,
  view: View,
): void => {
  const times = view.scale / then.scale;
  context.drawImage(
    canvas,
    view.x - (margin + then.x) * times,
    view.y - (margin + then.y) * times,
    (pad.width + 2 * margin) * times,
    (pad.height + 2 * margin) * times,
  );
};
