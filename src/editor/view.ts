import type { Bounds } from '../geometry/bounds.ts';
import type { ScreenPoint, SitePoint } from '../geometry/point.ts';
import { farthest } from '../geometry/tolerance.ts';
import type { View } from '../store/view.ts';
import { inches } from '../units/inches.ts';
import type { Inches } from '../units/inches.ts';

/** The size of the pad in CSS pixels. */
export interface Pad {
  readonly width: number;
  readonly height: number;
}

/**
 * CSS pixels to an inch of ground, smallest and largest: at the smallest the largest site is about
 * 250 px wide, which a phone holds, at the largest 1/16 in is 4 px.
 */
export const scaleLimits = { least: 250 / (2 * farthest), most: 64 } as const;

const held = (scale: number): number =>
  Math.min(scaleLimits.most, Math.max(scaleLimits.least, scale));

/** Where a point of the ground is on the screen, in CSS pixels, y down. */
export const toScreen = ({ scale, x, y }: View, at: SitePoint): ScreenPoint => ({
  x: x + at.x * scale,
  y: y - at.y * scale,
});

/** The point of the ground under a point of the screen, in inches, y north. */
export const toSite = ({ scale, x, y }: View, at: ScreenPoint): SitePoint => ({
  x: (at.x - x) / scale,
  y: (y - at.y) / scale,
});

/** How long a piece of the screen (CSS pixels) is on the ground. */
export const toGround = ({ scale }: View, pixels: number): Inches => inches(pixels / scale);

/** The view moved by CSS pixels, so that the ground goes with the hand. */
export const panBy = (view: View, by: ScreenPoint): View => ({
  ...view,
  x: view.x + by.x,
  y: view.y + by.y,
});

/**
 * The view made larger by a factor about a point of the screen: what is under it stays there.
 * Stops at the limits of the scale; a factor that is no number above zero changes nothing.
 */
export const zoomAt = (view: View, at: ScreenPoint, factor: number): View => {
  if (!Number.isFinite(factor) || factor <= 0) return view;
  const scale = held(view.scale * factor);
  const by = scale / view.scale;
  return { scale, x: at.x + (view.x - at.x) * by, y: at.y + (view.y - at.y) * by };
};

/** The least ground that a fitted view shows either way: 20 ft, so that one mark does not fill it. */
const leastGround = 240;

/**
 * The view that shows bounds of ground (inches) in the middle of the pad as large as they fit,
 * with `margin` CSS pixels kept free on every side, or a quarter of the pad if that is less.
 */
export const fitTo = (bounds: Bounds, pad: Pad, margin: number): View => {
  const { minX, minY, maxX, maxY } = bounds;
  const room = (size: number): number => Math.max(1, size - 2 * Math.min(margin, size / 4));
  const scale = held(
    Math.min(
      room(pad.width) / Math.max(leastGround, maxX - minX),
      room(pad.height) / Math.max(leastGround, maxY - minY),
    ),
  );
  const middle = toScreen({ scale, x: 0, y: 0 }, { x: (minX + maxX) / 2, y: (minY + maxY) / 2 });
  return { scale, x: pad.width / 2 - middle.x, y: pad.height / 2 - middle.y };
};
