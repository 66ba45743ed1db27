import { expect, test } from '@playwright/test';
import { crashRounds } from './crashRounds.ts';

test('every edit that the screen said to be kept is there after the browser was killed', async ({
  baseURL,
}) => {
  const figures = await crashRounds({ address: baseURL ?? '', rounds: 5, seed: 20261127 });
  expect(figures.lost).toBe(0);
  expect(figures.acknowledged).toBeGreaterThan(2);
});
