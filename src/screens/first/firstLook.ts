import { painted } from '../../canvas/painted.ts';
import { paintYard } from '../../canvas/paintYard.ts';
import { palettes } from '../../drawing/palettes.ts';
import type { Pad } from '../../editor/view.ts';
import { current } from '../../store/history.ts';
import type { View } from '../../store/view.ts';
import { fittedView } from '../fittedView.ts';
import { screenOf } from '../frame/tabs.ts';
import { padInch } from '../padInch.ts';
import { planOf } from '../yard/planOf.ts';
import type { OpenedYard } from './openedYard.ts';

/** How the yard was looked at when it was first drawn. */
export interface FirstLook {
  readonly view: View;
  readonly pad: Pad;
}

/** The place of the pad in the frame that the page has before the program is there. */
const ground = (): HTMLElement | null => document.querySelector('#first .first-ground');

/**
 * Draws the yard where the pad will be, before what one draws with is loaded: as it was looked at last,
 * else all of it. Null where another screen is open, or the pad has no room.
 */
export const firstLook = async (opened: OpenedYard): Promise<FirstLook | null> => {
  const { kept, site, layOut } = opened;
  const { theme = 'day', view: seen, screen = 'yard' } = kept.session;
  document.documentElement.dataset['theme'] = theme;
  const [place, inch] = [ground(), padInch[theme]];
  const { width = 0, height = 0 } = place?.getBoundingClientRect() ?? {};
  const asked = screenOf(window.location.hash) ?? screen;
  if (place === null || asked !== 'yard' || width === 0 || height === 0) return null;
  const pad = { width, height };
  const shown = current(site.getState().history);
  const layout = layOut(shown);
  const wanted = kept.job === null ? undefined : seen;
  const view = wanted ?? fittedView({ site: shown, layout, pad, inch });
  const [palette, { system }] = [palettes[theme], shown.lengths];
  place.replaceChildren(
    paintYard({ primitives: planOf(shown, layout).flat(), palette, system, inch, view, pad }),
  );
  await painted();
  performance.mark('yard painted');
  return { view, pad };
};
