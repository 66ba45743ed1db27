import { current } from '../store/history.ts';
import type { Bench } from './bench.ts';
import { fittedView } from './fittedView.ts';
import { padInch } from './padInch.ts';

/** Shows all that is drawn. Nothing before the pad has a size. */
export const fitAll = ({ site, session, layOut, pad }: Bench): void => {
  const size = pad.getState();
  if (size === null) return;
  const shown = current(site.getState().history);
  const inch = padInch[session.getState().theme];
  const view = fittedView({ site: shown, layout: layOut(shown), pad: size, inch });
  session.setState({ view });
};
