import { fitTo } from '../editor/view.ts';
import { boundsOf } from '../geometry/bounds.ts';
import { current } from '../store/history.ts';
import type { Bench } from './bench.ts';
import { padInch } from './padInch.ts';

/** Kept free around a fitted drawing for its dimensions, in paper inches. */
const margin = 0.86;
/** The line that says what to do next lies over the top of the pad. */
const promptHeight = 44;
/** The keys that zoom lie over its foot. */
const keysHeight = 40;
/** What an empty pad shows: 100 ft of ground each way. */
const emptyGround = { minX: -600, minY: -600, maxX: 600, maxY: 600 };

/** Shows all that is drawn. Nothing happens before the pad has a size. */
export const fitAll = ({ site, session, pad }: Bench): void => {
  const size = pad.getState();
  if (size === null) return;
  const marks = Object.values(current(site.getState().history).marks);
  const room = { width: size.width, height: size.height - promptHeight - keysHeight };
  const { theme } = session.getState();
  const view = fitTo(boundsOf(marks) ?? emptyGround, room, margin * padInch[theme]);
  session.setState({ view: { ...view, y: view.y + promptHeight } });
};
