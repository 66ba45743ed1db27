import { distance } from '../../../src/geometry/distance.ts';
import type { SitePoint } from '../../../src/geometry/point.ts';
import type { Network } from '../../../src/engine/survey/networks.ts';
import type { MarkId } from '../../../src/site/ids.ts';
import { chanceOf } from './chance.ts';
import { blurred, networkOf, sketchOf, trueTape } from './yardNetwork.ts';

/**
 * So many marks over open ground with so many tapes between near neighbours, read with what chance adds
 * and sketched up to ten feet off.
 */
export const bigNetwork = (marks: number, tapes: number, seed = 1, rough = 40): Network => {
  const chance = chanceOf(seed);
  const side = 120 * Math.sqrt(marks);
  const truth = new Map<MarkId, SitePoint>(
    Array.from({ length: marks }, (_, n) => [
      `mark:${String(n).padStart(4, '0')}` as MarkId,
      { x: chance.between(0, side), y: chance.between(0, side) },
    ]),
  );
  const ids = [...truth.keys()];
  const apart = (a: MarkId, b: MarkId): number => distance(truth.get(a)!, truth.get(b)!);
  const near = ids.map((id) =>
    ids.filter((other) => other !== id).toSorted((a, b) => apart(id, a) - apart(id, b)),
  );
  const pairs = new Map<string, readonly [MarkId, MarkId]>();
  for (let rank = 0; pairs.size < tapes; rank += 1) {
    ids.forEach((id, n) => {
      const other = near[n]?.[rank];
      if (other === undefined || pairs.size >= tapes) return;
      pairs.set([id, other].toSorted().join(' '), [id, other]);
    });
  }
  const seen = [...pairs.values()].map(([a, b]) => blurred(trueTape(truth, a, b), chance));
  return networkOf(sketchOf(truth, rough, chance), seen);
};
