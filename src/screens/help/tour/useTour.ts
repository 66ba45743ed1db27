import { useEffect } from 'react';
import type { Tour } from '../../../store/tour.ts';
import { useBench, useLayout, useSession } from '../../bench.ts';
import { useStored } from '../../useStored.ts';
import { seenOf } from './seenOf.ts';
import { broughtOn } from './tourMoves.ts';
import type { TourNow } from './tourNow.ts';

/** The program as the tour looks at it now. */
export const useTourNow = (): TourNow => {
  const { sender, site: documents } = useBench();
  // a gate that only follows the pointer is none
  const site = useStored(documents, ({ history }) => history.present.site);
  const { flags } = useLayout();
  const screen = useSession((state) => state.screen);
  const tool = useSession((state) => state.tool);
  const selection = useSession((state) => state.selection);
  const drawing = useStored(sender.hand, ({ piece }) => piece !== null);
  return { seen: seenOf(site), screen, tool, selection, drawing, flags: flags.length };
};

/** Moves a tour on by itself whenever what its step asks for was done. */
export const useTourGoesOn = (tour: Tour, now: TourNow): void => {
  const { session } = useBench();
  const next = broughtOn(tour, now);
  useEffect(() => {
    if (next !== tour) session.setState({ tour: next });
  }, [session, next, tour]);
};
