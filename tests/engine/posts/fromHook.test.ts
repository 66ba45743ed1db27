import { expect, it } from 'vitest';
import { fromHook } from '../../../src/engine/posts/fromHook.ts';
import { inches } from '../../../src/units/inches.ts';

it('[P6] a station is read from the end that is hooked, to the last bit', () => {
  const run = { length: inches(250) };
  const third = inches(250 / 3);
  expect(fromHook(run, third, 'start')).toBe(third);
  expect(fromHook(run, third, 'end')).toBe(250 - 250 / 3);
  expect([fromHook(run, inches(0), 'end'), fromHook(run, run.length, 'end')]).toEqual([250, 0]);
});
