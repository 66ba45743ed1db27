import type { Bench } from '../../bench.ts';
import { seenOf } from './seenOf.ts';
import { begun } from './tourMoves.ts';

/** The element id of what the tour begins with. */
export const tourHeadId = 'tour-head';

/** Begins the tour on the yard that is on the pad, with nothing in hand, and leads to it. */
export const beginTour = ({ site, session, sender }: Bench): void => {
  sender.send({ do: 'leave' });
  const { present } = site.getState().history;
  session.setState({ tour: begun(seenOf(present.site)), tool: 'select', help: 'closed' });
  window.location.hash = '#yard';
  requestAnimationFrame(() => document.getElementById(tourHeadId)?.focus());
};
