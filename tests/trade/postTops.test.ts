import { expect, it } from 'vitest';
import { courtPostTops, defaultPostTops } from '../../src/trade/postTops.ts';

it('[T7] terminals stand 2 in above the fabric and line posts 2 in below by default', () => {
  // McElroy, Fences & Retaining Walls
  expect([defaultPostTops.terminal, defaultPostTops.line]).toEqual([2, -2]);
  expect(defaultPostTops.source.status).toBe('published');
});

it('gives the posts of a 10 ft court as 10 ft 1 in and 9 ft 9 in', () => {
  // common practice, no published source
  const heights = [courtPostTops.terminal, courtPostTops.line].map((above) => 120 + above);
  expect(heights).toEqual([121, 117]);
});
