import { add } from '../../geometry/add.ts';
import { distance } from '../../geometry/distance.ts';
import { pictureMap } from '../../geometry/pictureMap.ts';
import type { PicturePoint } from '../../geometry/point.ts';
import { scale } from '../../geometry/scale.ts';
import { subtract } from '../../geometry/subtract.ts';
import { spot } from '../../geometry/tolerance.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { Inches } from '../../units/inches.ts';
import type { UnderlayId } from '../ids.ts';
import type { Site } from '../site.ts';
import { tiesOf } from '../tiesOf.ts';
import { looseUnderlay, withTies } from '../withTies.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Two points of a picture, and how far apart they are known to be on the ground. */
export interface KnownDistance {
  readonly from: PicturePoint;
  readonly to: PicturePoint;
  readonly length: Inches;
}

/**
 * Makes a picture as large as a known distance on it says: the first point stays where it lies and the
 * way to the second what it is. RangeError for one that is locked or unknown, for points beyond its
 * horizon or on one spot, and for a distance of zero or less.
 */
export const scaleUnderlay = (
  site: Site,
  id: UnderlayId,
  { from, to, length }: KnownDistance,
): Site => {
  const underlay = looseUnderlay(site, id);
  const { toSite, depth } = pictureMap(tiesOf(underlay));
  if (!(depth(from) > 0 && depth(to) > 0)) {
    throw new RangeError(
      phrase`distance: expected two points of the ground, found one beyond its horizon`,
    );
  }
  const [here, there] = [toSite(from), toSite(to)];
  const lies = distance(here, there);
  if (!(lies >= spot)) {
    throw new RangeError(
      phrase`distance: expected two points of the picture, found both on one spot`,
    );
  }
  if (!(length >= spot)) {
    const found = formatLength(length, site.lengths);
    throw new RangeError(phrase`distance: expected more than 0, found ${found}`);
  }
  const times = length / lies;
  const ties = tiesOf(underlay).map(({ u, v, ...at }) => ({
    u,
    v,
    ...add(here, scale(subtract(at, here), times)),
  }));
  return withTies(site, id, { ties, size: 'told' });
};
