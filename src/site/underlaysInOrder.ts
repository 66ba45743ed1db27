import { signedArea } from '../geometry/signedArea.ts';
import type { UnderlayId } from './ids.ts';
import type { Site } from './site.ts';
import type { Underlay } from './underlay.ts';
import { underlayGround } from './underlayGround.ts';

/**
 * The pictures under a drawing as they lie, the undermost first: what shows more ground lies lower, so
 * that none hides a smaller one; of two alike the one with the later id lies higher.
 */
export const underlaysInOrder = (
  site: Pick<Site, 'underlays'>,
): readonly (readonly [UnderlayId, Underlay])[] => {
  const all = Object.entries(site.underlays) as [UnderlayId, Underlay][];
  const sized = all.map(
    ([id, underlay]) => [id, underlay, Math.abs(signedArea(underlayGround(underlay)))] as const,
  );
  return sized
    .toSorted(([a, , large], [b, , small]) => small - large || (a < b ? -1 : 1))
    .map(([id, underlay]) => [id, underlay] as const);
};
