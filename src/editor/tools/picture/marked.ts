import { contains } from '../../../geometry/contains.ts';
import { distance } from '../../../geometry/distance.ts';
import type { FourTies } from '../../../geometry/homographyOf.ts';
import { midpoint } from '../../../geometry/midpoint.ts';
import { pictureMap, type PictureMap } from '../../../geometry/pictureMap.ts';
import type { PicturePoint, SitePoint } from '../../../geometry/point.ts';
import { rectangleTies, type FourCorners } from '../../../geometry/rectangleTies.ts';
import { tieOf, type Tie } from '../../../geometry/tie.ts';
import { tiesFault } from '../../../geometry/tiesFault.ts';
import { straightenUnderlay } from '../../../site/edits/straightenUnderlay.ts';
import { tieUnderlay } from '../../../site/edits/tieUnderlay.ts';
import type { Site } from '../../../site/site.ts';
import { tiesOf } from '../../../site/tiesOf.ts';
import type { Underlay } from '../../../site/underlay.ts';
import { underlayGround } from '../../../site/underlayGround.ts';
import type { Pointer } from '../../pointer.ts';
import { snap, type Snap } from '../../snap.ts';
import type { Answer } from '../../tool.ts';
import { untyped } from '../../typed.ts';
import { idle, pointsOf, type Marking, type PictureState } from './pictureState.ts';
import { phrase, sentenceCase } from '../../../phrases/phrase.ts';

/** Whether the next point is one of the picture, or the place that the last one shows. */
export const wants = ({ seen, shown, way }: Marking): 'picture' | 'place' =>
  way.endsWith('places') && seen.length > shown.length ? 'place' : 'picture';

/** The place that a hand means: it is drawn to marks, legs and lines as when one draws. */
export const placeAt = (site: Site, pointer: NonNullable<Pointer>): Snap =>
  snap(site, { ...pointer, from: null, last: null, typed: untyped, except: [], also: [] });

/** A marking without its last point, and without the place of that. */
export const without = (state: Marking): Marking => {
  const seen = state.seen.slice(0, -1);
  return { ...state, seen, shown: state.shown.slice(0, seen.length) };
};

const refused = (state: Marking, line: string): Answer<PictureState> => ({
  state: without(state),
  say: phrase`${sentenceCase(line)}: set the last one elsewhere`,
});

/** Where a length is asked of side `n`: at the middle of it. */
export const sideMiddle = (
  { toSite }: PictureMap,
  seen: readonly PicturePoint[],
  n: number,
): SitePoint => {
  const [from, to] = [seen[n], seen[n + 1]];
  return from === undefined || to === undefined
    ? { x: 0, y: 0 }
    : midpoint<'site'>(toSite(from), toSite(to));
};

/** What is wrong with points of which a length will be asked, as one line; else null. */
const pointsFault = (map: PictureMap, { seen }: Marking): string | null => {
  const [a, b] = seen;
  if (seen.length === 2 && a !== undefined && b !== undefined) {
    const apart = distance(map.toSite(a), map.toSite(b));
    return tiesFault([tieOf(a, { x: 0, y: 0 }), tieOf(b, { x: apart, y: 0 })]);
  }
  // any rectangle tells what is wrong with the corners on the picture
  const ties = rectangleTies(map, seen as unknown as FourCorners, { first: 100, second: 100 });
  return ties === null ? phrase`the four points are in a row on the picture` : tiesFault(ties);
};

const tied = (site: Site, state: Marking, ties: readonly Tie[]): Answer<PictureState> => {
  const fault = tiesFault(ties);
  if (fault !== null) return refused(state, fault);
  const [first, second] = ties;
  const laid =
    ties.length === 2 && first !== undefined && second !== undefined
      ? tieUnderlay(site, state.id, [first, second])
      : straightenUnderlay(site, state.id, ties as unknown as FourTies);
  const label = ties.length === 2 ? phrase`Lay picture` : phrase`Straighten picture`;
  return { state: idle, commit: { site: laid, label } };
};

/** What follows once all points of a marking are set. */
const whole = (site: Site, underlay: Underlay, state: Marking): Answer<PictureState> => {
  const map = pictureMap(tiesOf(underlay));
  const { way, seen, shown, id } = state;
  if (way === 'two places' || way === 'four places') {
    const ties = seen.flatMap((point, n) => {
      const at = shown[n];
      return at === undefined ? [] : [tieOf(point, at)];
    });
    return tied(site, state, ties);
  }
  const fault = pointsFault(map, state);
  if (fault !== null) return refused(state, fault);
  const at = sideMiddle(map, seen, 0);
  return { state: { is: 'asking', id, way, seen, sides: [], at, reads: null } };
};

/** The answer to a point that is set where the hand lifts. */
export const marked = (site: Site, underlay: Underlay, before: Marking): Answer<PictureState> => {
  const state = { ...before, down: false };
  const { pointer, way } = state;
  if (pointer === null) return { state };
  if (wants(state) === 'place') {
    const { x, y } = placeAt(site, pointer).point;
    const next = { ...state, shown: [...state.shown, { x, y }] };
    return next.shown.length === pointsOf[way] ? whole(site, underlay, next) : { state: next };
  }
  if (!contains(underlayGround(underlay), pointer.at)) {
    return { state, say: phrase`This point is beside the picture: expected one on it` };
  }
  const point = pictureMap(tiesOf(underlay)).toPicture(pointer.at);
  const next = { ...state, seen: [...state.seen, point] };
  const done = next.seen.length === pointsOf[way] && !way.endsWith('places');
  return done ? whole(site, underlay, next) : { state: next };
};
