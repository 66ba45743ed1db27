import { distance } from '../../geometry/distance.ts';
import { scale } from '../../geometry/scale.ts';
import { unitVector } from '../../geometry/unitVector.ts';
import { checked } from '../checked.ts';
import type { FeatureId, MarkId, VertexId } from '../ids.ts';
import { legGround } from '../legGround.ts';
import type { DrawnLeg } from '../legsOf.ts';
import { isClosed, pathFeature } from '../pathFeature.ts';
import { positiveLength } from '../quantities.ts';
import { sideAt, sidesOf } from '../sideAt.ts';
import type { Site } from '../site.ts';
import { moveMarks } from './moveMarks.ts';
import { setTape } from './setTape.ts';
import { phrase } from '../../phrases/phrase.ts';

/**
 * Gives a side of a feature a length in inches, along the bearing that it has. Round closed ground
 * the next side moves along as it is, so that a rectangle stays one; along an open line everything
 * after the side does. It is what the tape reads between its marks from then on. RangeError for an unknown feature or side, a length of zero or less, and a
 * side whose marks are on one spot.
 */
export const setSideLength = (site: Site, id: FeatureId, side: VertexId, length: number): Site => {
  const drawn = sideAt(site, id, side);
  const wanted = checked(positiveLength, length, ['features', id, 'side', side, 'length']);
  const ground = legGround(site, drawn);
  const way = unitVector(ground.start, ground.end);
  if (way === null) {
    throw new RangeError(
      phrase`features › ${id}: expected a side of two marks apart, found one spot`,
    );
  }
  const by = scale(way, wanted - distance(ground.start, ground.end));
  const moved = moveMarks(site, movingMarks(site, id, drawn), by);
  return setTape(moved, drawn.start, drawn.end, wanted);
};

const movingMarks = (site: Site, id: FeatureId, side: DrawnLeg): MarkId[] => {
  const sides = sidesOf(site, id);
  const after = sides.slice(sides.findIndex((one) => one.id === side.id) + 1);
  const round = isClosed(pathFeature(site, id));
  const next = sides.find((one) => one.id === side.next);
  const ends = round ? [next?.end] : after.map(({ end }) => end);
  return [side.end, ...ends].filter(
    (mark): mark is MarkId => mark !== undefined && mark !== side.start,
  );
};
