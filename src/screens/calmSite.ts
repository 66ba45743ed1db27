import { createCell } from '../store/cell.ts';
import type { Layout } from '../engine/layout.ts';
import type { Site } from '../site/site.ts';
import type { Bench } from './bench.ts';

/** So long drafts of a gesture wait at most before they are shown, milliseconds: four times a second is alive. */
const calm = 250;

/** The document and its layout at a calmer pace, and how to let go of it. */
export interface CalmSite extends Pick<Bench, 'site' | 'layOut'> {
  /** Follows from now on; gives back how to follow no more. */
  readonly follow: () => () => void;
}

/**
 * The document of a bench for what need not follow each move of the hand: the first draft of a gesture and what it
 * leads to come at once, the drafts between a few times a second, so that all is right when the hand rests.
 */
export const calmSite = ({ site, layOut }: Pick<Bench, 'site' | 'layOut'>): CalmSite => {
  const shown = createCell(site.getState());
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const pass = (): void => {
    clearTimeout(waiting);
    waiting = undefined;
    shown.setState(site.getState(), true);
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
        if (amid) waiting ??= setTimeout(pass, calm);
        else pass();
      });
      return () => {
        leave();
        clearTimeout(waiting);
      };
    },
  };
};
