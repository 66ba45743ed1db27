import type { Pad } from '../editor/view.ts';
import type { Bounds } from '../geometry/bounds.ts';

/** How far the still drawing reaches over the pad on every side, in CSS pixels. */
export const overPad = 160;

/** The part of the paper that is drawn for a pad (CSS pixels), in paper inches of `inch` pixels. */
export const padWindow = ({ width, height }: Pad, inch: number): Bounds => ({
  minX: -overPad / inch,
  minY: -overPad / inch,
  maxX: (width + overPad) / inch,
  maxY: (height + overPad) / inch,
});
