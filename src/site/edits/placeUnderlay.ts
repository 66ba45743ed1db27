import { add } from '../../geometry/add.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { rotated } from '../../geometry/rotated.ts';
import { scale } from '../../geometry/scale.ts';
import { subtract } from '../../geometry/subtract.ts';
import type { Radians } from '../../units/radians.ts';
import type { UnderlayId } from '../ids.ts';
import type { Site } from '../site.ts';
import { tiesOf } from '../tiesOf.ts';
import { looseUnderlay, withTies } from '../withTies.ts';
import { phrase } from '../../phrases/phrase.ts';

/** A picture as a whole turned (counter-clockwise) and made so many times larger about a point, then moved. */
export interface Placing {
  readonly about: SitePoint;
  readonly turn: Radians;
  readonly times: number;
  readonly by: SitePoint;
}

/**
 * Lays a picture elsewhere as a whole; what was straightened stays straight. One that was made larger or
 * smaller is of a guessed size. RangeError for one that is locked or unknown, for a size of zero or less,
 * and beyond ten miles.
 */
export const placeUnderlay = (
  site: Site,
  id: UnderlayId,
  { about, turn, times, by }: Placing,
): Site => {
  if (!(times > 0)) throw new RangeError(phrase`size: expected more than 0 times, found ${times}`);
  const underlay = looseUnderlay(site, id);
  const ties = tiesOf(underlay).map(({ u, v, x, y }) => {
    const off = scale(subtract(rotated<'site'>({ x, y }, about, turn), about), times);
    return { u, v, ...add(add(about, off), by) };
  });
  return withTies(site, id, { ties, size: times === 1 ? underlay.size : 'guessed' });
};
