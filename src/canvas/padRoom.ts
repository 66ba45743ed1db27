import type { Room } from '../drawing/drawOnPaper.ts';
import type { Pad } from '../editor/view.ts';
import type { Bounds } from '../geometry/bounds.ts';

/** How far the still drawing reaches over the pad on every side, in CSS pixels. */
export const overPad = 160;
/** Clear of the edge of the pad, so that no letter touches it; CSS pixels. */
const inset = 3;

/** A pad grown by so many CSS pixels on every side, in paper inches of `inch` pixels. */
const grown = ({ width, height }: Pad, by: number, inch: number): Bounds => ({
  minX: -by / inch,
  minY: -by / inch,
  maxX: (width + by) / inch,
  maxY: (height + by) / inch,
});

/**
 * Where letters go on a pad (CSS pixels), in paper inches of `inch` pixels: the drawing reaches over
 * the pad, so that it can be moved, but what is on the pad is named on it where that can be.
 */
export const padRoom = (pad: Pad, inch: number): Room => ({
  window: grown(pad, overPad, inch),
  shown: grown(pad, -inset, inch),
});
