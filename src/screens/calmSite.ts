import { createCell } from '../store/cell.ts';
import type { Layout } from '../engine/layout.ts';
import type { Site } from '../site/site.ts';
import type { Bench } from './bench.ts';

/** A draft is shown when no other has come for so long, and waits no longer than that; milliseconds. Ours. */
const [rest, longest] = [150, 750];

/** The document and its layout at a calmer pace, and how to let go of it. */
export interface CalmSite extends Pick<Bench, 'site' | 'layOut'> {
  /** Follows from now on; gives back how to follow no more. */
  readonly follow: () => () => void;
}

/**
 * The document of a bench for what need not follow each move of the hand: the first draft of a gesture and what it
 * leads to come at once, the drafts between when the hand rests, and now and then while it does not.
 */
export const calmSite = ({ site, layOut }: Pick<Bench, 'site' | 'layOut'>): CalmSite => {
  const shown = createCell(site.getState());
  let waiting: ReturnType<typeof setTimeout> | undefined;
  // when the drafts that wait began to come, and when the last of them came
  let [first, last] = [0, 0];
  const pass = (): void => {
    clearTimeout(waiting);
    waiting = undefined;
    shown.setState(site.getState(), true);
  };
  const look = (): void => {
    const left = Math.min(last + rest, first + longest) - performance.now();
    if (left > 0) waiting = setTimeout(look, left);
    else pass();
  };
  const wait = (): void => {
    last = performance.now();
    if (waiting !== undefined) return;
    first = last;
    waiting = setTimeout(look, rest);
  };
  let laid: { readonly site: Site; readonly layout: Layout } | null = null;
  return {
    site: shown,
    // what is shown may be older than what the bench still knows the layout of
    layOut: (asked) => {
      if (laid?.site !== asked) laid = { site: asked, layout: layOut(asked) };
      return laid.layout;
    },
    follow: () => {
      pass();
      const leave = site.subscribe(({ history }) => {
        const amid = history.draft !== null && shown.getState().history.draft !== null;
        if (amid) wait();
        else pass();
      });
      return () => {
        leave();
        clearTimeout(waiting);
      };
    },
  };
};
