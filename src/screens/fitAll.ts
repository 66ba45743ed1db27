import { fitInk } from '../canvas/fitInk.ts';
import { fitPlan } from '../drawing/plan/fitPlan.ts';
import { boundsOf } from '../geometry/bounds.ts';
import type { Underlay } from '../site/underlay.ts';
import { underlayGround } from '../site/underlayGround.ts';
import { current } from '../store/history.ts';
import type { Bench } from './bench.ts';
import { padInch } from './padInch.ts';

/** The line that says what to do next lies over the top of the pad. */
const promptHeight = 56;
/** The keys that zoom lie over its foot. */
const keysHeight = 60;
/** Kept free at the edges, in CSS pixels. */
const edge = 10;
/** What an empty pad shows: 100 ft of ground each way. */
const emptyGround = { minX: -600, minY: -600, maxX: 600, maxY: 600 };

/**
 * Shows all that is drawn, with the dimensions around it; the names of gates find their places
 * where there is room. Nothing before the pad has a size.
 */
export const fitAll = ({ site, session, layOut, pad }: Bench): void => {
  const size = pad.getState();
  if (size === null) return;
  const shown = current(site.getState().history);
  // where nothing is drawn yet, what there is to draw over
  const pictured = Object.values<Underlay>(shown.underlays).flatMap(underlayGround);
  const { width, height } = size;
  const view = fitInk({
    primitives: fitPlan(shown, layOut(shown)),
    ground: boundsOf(Object.values(shown.marks)) ?? boundsOf(pictured) ?? emptyGround,
    pad: size,
    room: { minX: edge, minY: promptHeight, maxX: width - edge, maxY: height - keysHeight },
    inch: padInch[session.getState().theme],
  });
  session.setState({ view });
};
