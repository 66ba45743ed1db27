import { expect, it } from 'vitest';
import {
  defaultPullGrade,
  defaultPullInterval,
  pullGrades,
  pullIntervals,
} from '../../src/trade/pullPosts.ts';

it('[T7] published pull intervals run from 69 m over 500 ft to 1,000 ft', () => {
  // diydata (BS 1722 class), McElroy, Caltrans 80-3.03
  expect(pullIntervals.map(({ length }) => Math.round((length / 12) * 10) / 10)).toEqual([
    226.4, 500, 1000,
  ]);
  expect(pullIntervals).toContain(defaultPullInterval);
});

it('[T7] published changes of grade are 15 in 100 and 30 degrees', () => {
  // installation sheet, Scribd 154728461; Iowa DOT 2519
  expect(defaultPullGrade.ratio).toBe(0.15);
  expect((Math.atan(pullGrades[1]?.ratio ?? 0) * 180) / Math.PI).toBeCloseTo(30, 9);
});
