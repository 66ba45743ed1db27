import { fitInk } from '../canvas/fitInk.ts';
import { fitPlan } from '../drawing/plan/fitPlan.ts';
import type { Pad } from '../editor/view.ts';
import type { Layout } from '../engine/layout.ts';
import { boundsOf } from '../geometry/bounds.ts';
import type { Site } from '../site/site.ts';
import type { Underlay } from '../site/underlay.ts';
import { underlayGround } from '../site/underlayGround.ts';
import type { View } from '../store/view.ts';

/** The line that says what to do next lies over the top of the pad. */
const promptHeight = 56;
/** The keys that zoom lie over its foot. */
const keysHeight = 60;
/** Kept free at the edges, in CSS pixels. */
const edge = 10;
/** What an empty pad shows: 100 ft of ground each way. */
const emptyGround = { minX: -600, minY: -600, maxX: 600, maxY: 600 };

/** A yard, and the pad that all of it is to be shown on; `inch` in CSS pixels for a paper inch. */
interface Fitted {
  readonly site: Site;
  readonly layout: Layout;
  readonly pad: Pad;
  readonly inch: number;
}

/**
 * The view of all that is drawn, with the dimensions around it; the names of gates find their places
 * where there is room.
 */
export const fittedView = ({ site, layout, pad, inch }: Fitted): View => {
  // where nothing is drawn yet, what there is to draw over
  const pictured = Object.values<Underlay>(site.underlays).flatMap(underlayGround);
  const { width, height } = pad;
  return fitInk({
    primitives: fitPlan(site, layout),
    ground: boundsOf(Object.values(site.marks)) ?? boundsOf(pictured) ?? emptyGround,
    pad,
    room: { minX: edge, minY: promptHeight, maxX: width - edge, maxY: height - keysHeight },
    inch,
  });
};
