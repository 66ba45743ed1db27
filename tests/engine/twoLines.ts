import type { Site } from '../../src/site/site.ts';
import { bare, fence, gateOn } from './plainYard.ts';

/** Two fence lines of four legs each, with gates in the first and the third leg of one. */
export const twoLines = (): Site => {
  const zigzag = (up: number) =>
    [0, 1, 2, 3, 4].map((n): readonly [number, number] => [n * 600, up + (n % 2) * 300]);
  const drawn = fence(fence(bare, zigzag(0)), zigzag(5000));
  const one = gateOn(drawn, 0, { from: 'middle', offset: 0 });
  return gateOn(one, 2, { from: 'middle', offset: 0 });
};
