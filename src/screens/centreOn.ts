import { toScreen } from '../editor/view.ts';
import type { SitePoint } from '../geometry/point.ts';
import type { Bench } from './bench.ts';

/** Moves the pad so that a point of the ground is in its middle; the scale stays. */
export const centreOn = ({ session, pad }: Bench, at: SitePoint): void => {
  const size = pad.getState();
  if (size === null) return;
  session.setState(({ view }) => {
    const seen = toScreen(view, at);
    const by = { x: size.width / 2 - seen.x, y: size.height / 2 - seen.y };
    return { view: { ...view, x: view.x + by.x, y: view.y + by.y } };
  });
};
