import { distance } from '../../../geometry/distance.ts';
import { pictureMap } from '../../../geometry/pictureMap.ts';
import { rectangleTies, type FourCorners } from '../../../geometry/rectangleTies.ts';
import { tiesFault } from '../../../geometry/tiesFault.ts';
import { scaleUnderlay } from '../../../site/edits/scaleUnderlay.ts';
import { straightenUnderlay } from '../../../site/edits/straightenUnderlay.ts';
import type { Site } from '../../../site/site.ts';
import { tiesOf } from '../../../site/tiesOf.ts';
import type { Underlay } from '../../../site/underlay.ts';
import { inches, type Inches } from '../../../units/inches.ts';
import type { Answer, Asked } from '../../tool.ts';
import { sideMiddle } from './marked.ts';
import { idle, type Asking, type PictureState } from './pictureState.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** How long the piece is of which it is asked, as the picture lies now; inches. */
const offered = (underlay: Underlay, { seen, sides }: Asking): Inches => {
  const { toSite } = pictureMap(tiesOf(underlay));
  const [from, to] = [seen[sides.length], seen[sides.length + 1]];
  return inches(from === undefined || to === undefined ? 0 : distance(toSite(from), toSite(to)));
};

/** What is asked of the points that were set. */
export const askedOf = (underlay: Underlay, state: Asking): Asked => {
  const { way, sides, at } = state;
  const n = sides.length;
  const words =
    way === 'distance'
      ? { form: phrase`Distance on the picture`, field: phrase`From point 1 to point 2` }
      : {
          form: phrase`Sides of the rectangle`,
          field: phrase`From corner ${n + 1} to corner ${n + 2}`,
        };
  return {
    what: 'length',
    at,
    offered: offered(underlay, state),
    words: { ...words, drop: phrase`Drop these points` },
  };
};

const straightened = (
  site: Site,
  underlay: Underlay,
  { id, seen, sides }: Asking,
): Answer<PictureState> => {
  const [first = 0, second = 0] = sides;
  const map = pictureMap(tiesOf(underlay));
  const ties = rectangleTies(map, seen as unknown as FourCorners, { first, second });
  if (ties === null)
    return { state: idle, say: phrase`Not straightened: the four points are in a row` };
  const fault = tiesFault(ties);
  if (fault !== null) return { state: idle, say: phrase`Not straightened: ${fault}` };
  const commit = { site: straightenUnderlay(site, id, ties), label: phrase`Straighten picture` };
  return { state: idle, commit };
};

/** The answer to a length that is taken as it was typed, else as it is offered. */
export const told = (site: Site, underlay: Underlay, state: Asking): Answer<PictureState> => {
  const length = state.reads ?? offered(underlay, state);
  const { id, way, seen, sides } = state;
  if (way === 'distance') {
    const [from, to] = seen;
    if (from === undefined || to === undefined) return { state: idle };
    const scaled = scaleUnderlay(site, id, { from, to, length });
    return { state: idle, commit: { site: scaled, label: phrase`Size picture` } };
  }
  const next: Asking = { ...state, sides: [...sides, length], reads: null };
  if (next.sides.length === 2) return straightened(site, underlay, next);
  const at = sideMiddle(pictureMap(tiesOf(underlay)), seen, next.sides.length);
  return { state: { ...next, at } };
};
