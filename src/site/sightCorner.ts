import { bearing } from '../geometry/bearing.ts';
import { distance } from '../geometry/distance.ts';
import { moved } from '../geometry/moved.ts';
import type { SitePoint } from '../geometry/point.ts';
import { principalAngle } from '../geometry/principalAngle.ts';
import { spot } from '../geometry/tolerance.ts';
import { inches, type Inches } from '../units/inches.ts';
import { entry } from './entry.ts';
import type { FeatureId, MarkId } from './ids.ts';
import type { Place } from './markAt.ts';
import { isClosed } from './pathFeature.ts';
import { verticesOf } from './pathOrder.ts';
import { quoted } from './quoted.ts';
import type { Site } from './site.ts';
import { phrase } from '../phrases/phrase.ts';

/** A corner of a boundary or of paving, and how far a sight triangle is to reach along both its sides, inches. */
export interface CornerOf {
  readonly feature: FeatureId;
  readonly mark: MarkId;
  readonly leg: Inches;
}

/** The corners of a sight triangle, the one that it is drawn from first. */
export interface SightCorner {
  readonly places: readonly [MarkId, Place, Place];
  /** The lengths of the sides that end before the leg does: the triangle ends there too. */
  readonly short: readonly Inches[];
}

/** The marks at the far ends of the sides of a boundary or of paving that meet at a mark: none to two. */
const besides = (site: Site, id: FeatureId, mark: MarkId): readonly MarkId[] => {
  const feature = entry(site, 'features', id);
  if (feature.kind !== 'boundary' && feature.kind !== 'paving') return [];
  const marks = verticesOf(feature.path).map((vertex) => vertex.mark);
  const n = marks.indexOf(mark);
  if (n < 0) return [];
  const [first, last] = isClosed(feature) ? [marks[0], marks.at(-1)] : [];
  return [marks[n - 1] ?? last, marks[n + 1] ?? first].flatMap((end) => end ?? []);
};

/** Two sides that all but go on straight, or lie on each other, make no triangle; radians. Ours. */
const leastTurn = Math.PI / 180;

/**
 * The corners of a sight triangle at a corner of a boundary or of paving, a leg along each of its two
 * straight sides. A side that is shorter ends at its mark. RangeError with one line where there are not two
 * sides, or where they go on straight or fold back.
 */
export const sightCorner = (site: Site, { feature, mark, leg }: CornerOf): SightCorner => {
  const ends = besides(site, feature, mark);
  const corner = entry(site, 'marks', mark);
  if (ends.length < 2) {
    throw new RangeError(
      phrase`sight triangle: expected two sides of a boundary or of paving that meet, found ${ends.length}`,
    );
  }
  if (!(leg > spot))
    throw new RangeError(
      phrase`sight triangle: expected legs of more than 0, found ${quoted(leg)}`,
    );
  const sides = ends.map((end) => {
    const at: SitePoint = entry(site, 'marks', end);
    return { end, way: bearing(corner, at), length: distance(corner, at) };
  });
  const [a, b] = sides.map(({ way }) => way);
  const turn = Math.abs(principalAngle((b ?? 0) - (a ?? 0)));
  const folds = sides.some(({ length }) => length <= spot);
  if (folds || turn < leastTurn || turn > Math.PI - leastTurn) {
    throw new RangeError(
      phrase`sight triangle: expected two sides that meet at a corner, found sides in one line`,
    );
  }
  const [first, second] = sides.map(({ end, way, length }): Place =>
    leg >= length - spot ? end : moved(corner, way, leg),
  );
  return {
    places: [mark, first ?? mark, second ?? mark],
    short: sides.flatMap(({ length }) => (length < leg - spot ? [inches(length)] : [])),
  };
};
