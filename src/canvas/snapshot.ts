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

/** A picture of the pad in a view on a canvas: blank where that was of another size, else what was painted there. */
export const newSnapshot = (canvas: HTMLCanvasElement, view: View, pad: Pad): Snapshot => {
  const density = Math.min(finest, window.devicePixelRatio || 1);
  const [width, height] = [sized(pad.width, density), sized(pad.height, density)];
  if (canvas.width !== width) canvas.width = width;
  if (canvas.height !== height) canvas.height = height;
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

/** Lays the picture where the ground of its time is in another view: moved, not painted again. */
export const placeSnapshot = ({ canvas, view: then, density }: Snapshot, view: View): void => {
  const times = view.scale / then.scale;
  const [x, y] = [view.x - (overPad + then.x) * times, view.y - (overPad + then.y) * times];
  const { style } = canvas;
  style.width = `${canvas.width / density}px`;
  style.height = `${canvas.height / density}px`;
  style.transform = `translate(${x}px, ${y}px) scale(${times})`;
};
