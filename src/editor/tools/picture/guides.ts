import type { Primitive } from '../../../drawing/primitive.ts';
import { pictureMap } from '../../../geometry/pictureMap.ts';
import type { SitePoint } from '../../../geometry/point.ts';
import type { Site } from '../../../site/site.ts';
import { tiesOf } from '../../../site/tiesOf.ts';
import { radians } from '../../../units/radians.ts';
import { ghostMark } from '../../ghostPiece.ts';
import { snapGuides } from '../../snapGuides.ts';
import { placeAt, wants } from './marked.ts';
import type { Asking, Marking } from './pictureState.ts';

/** A ring about a point, so that what is under it can be seen. */
const ring = (centre: SitePoint): Primitive[] =>
  [0.1, 0.012].map((least) => ({
    kind: 'circle',
    centre,
    radius: 0,
    least,
    pen: 'selected',
    ink: null,
  }));

const numbered = (at: SitePoint, n: number): Primitive[] => [
  ...ring(at),
  {
    kind: 'text',
    at,
    text: `${n + 1}`,
    size: 0.17,
    rise: 0.12,
    angle: radians(0),
    ink: 'selected',
    weight: 'bold',
  },
];

const line = (points: readonly SitePoint[], pen: 'tape' | 'guide'): Primitive[] =>
  points.length < 2 ? [] : [{ kind: 'polyline', points, closed: points.length === 4, pen }];

/** The points that are set, by their numbers; between those of which a length is asked, a line. */
export const guides = (site: Site, state: Marking | Asking): readonly Primitive[] => {
  const underlay = site.underlays[state.id];
  if (underlay === undefined) return [];
  const { toSite } = pictureMap(tiesOf(underlay));
  const seen = state.seen.map(toSite);
  const points = seen.flatMap(numbered);
  if (state.is === 'asking') {
    const side = seen.slice(state.sides.length, state.sides.length + 2);
    return [...line(seen, 'guide'), ...line(side, 'tape'), ...points];
  }
  const { shown, pointer, way } = state;
  const pairs = shown.flatMap((at, n) => [...line([seen[n] ?? at, at], 'guide'), ghostMark(at)]);
  const chain = way.endsWith('places') ? [] : line(seen, 'tape');
  if (pointer === null) return [...chain, ...pairs, ...points];
  const hand = wants(state) === 'place' ? snapGuides(placeAt(site, pointer)) : ring(pointer.at);
  return [...chain, ...pairs, ...points, ...hand];
};
