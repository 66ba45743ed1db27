import type { Pad } from '../editor/view.ts';
import type { View } from '../store/view.ts';
import { overPad } from './padRoom.ts';

/** A picture as large as the pad with a margin around it, as the view was when it was taken. */
export interface Snapshot {
  readonly canvas: HTMLCanvasElement;
  readonly context: CanvasRenderingContext2D | null;
  readonly view: View;
  readonly pad: Pad;
  /** Pixels of the picture to a CSS pixel. */
  readonly density: number;
}

/** A finer picture than this is not told from it, and takes four times the memory. */
const finest = 2;

const sized = (length: number, density: number): number =>
  Math.round((length + 2 * overPad) * density);

/** A picture of the pad in a view, in the place of one before where that is as large; blank where it is not. */
export const newSnapshot = (view: View, pad: Pad, before: Snapshot | null): Snapshot => {
  const density = Math.min(finest, window.devicePixelRatio || 1);
  const [width, height] = [sized(pad.width, density), sized(pad.height, density)];
  const old = before?.canvas;
  if (old !== undefined && old.width === width && old.height === height)
    return { canvas: old, context: before?.context ?? null, view, pad, density };
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  return { canvas, context: canvas.getContext('2d'), view, pad, density };
};

/** Paints on a picture in CSS pixels of the pad; leaves it without a clip or a transform. */
export const onSnapshot = (
  { context, density }: Snapshot,
  paint: (context: CanvasRenderingContext2D) => void,
): void => {
  if (context === null) return;
  context.save();
  context.scale(density, density);
  context.translate(overPad, overPad);
  paint(context);
  context.restore();
};

/** Paints the picture where the ground of its time is in another view. */
export const showSnapshot = (
  context: CanvasRenderingContext2D,
  { canvas, view: then, pad }: Snapshot,
  view: View,
): void => {
  const times = view.scale / then.scale;
  context.drawImage(
    canvas,
    view.x - (overPad + then.x) * times,
    view.y - (overPad + then.y) * times,
    (pad.width + 2 * overPad) * times,
    (pad.height + 2 * overPad) * times,
  );
};
