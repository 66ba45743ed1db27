import { centroid } from '../geometry/centroid.ts';
import { distance } from '../geometry/distance.ts';
import { midpoint } from '../geometry/midpoint.ts';
import { pictureMap } from '../geometry/pictureMap.ts';
import type { SitePoint } from '../geometry/point.ts';
import { edges } from '../geometry/polygon.ts';
import { tiesOf } from '../site/tiesOf.ts';
import type { Underlay } from '../site/underlay.ts';
import { underlayGround } from '../site/underlayGround.ts';

/** What a hand takes to turn a picture, and the point about which it turns. */
export interface TurnKnob {
  readonly at: SitePoint;
  readonly about: SitePoint;
}

/**
 * The knob of a picture: in the middle of its upper edge, it turns about its middle; of a straightened
 * one in the middle of the longest edge of what it shows. Null where it shows no ground.
 */
export const turnKnob = (underlay: Underlay): TurnKnob | null => {
  const ground = underlayGround(underlay);
  const about = ground.length < 3 ? null : centroid(ground);
  if (about === null) return null;
  const ties = tiesOf(underlay);
  if (ties.length === 2) {
    return { at: pictureMap(ties).toSite({ x: underlay.width / 2, y: 0 }), about };
  }
  const [longest] = edges(ground).toSorted(
    (a, b) => distance(b.start, b.end) - distance(a.start, a.end),
  );
  return longest === undefined ? null : { at: midpoint(longest.start, longest.end), about };
};
