import { expect, it } from 'vitest';
import { shareText } from '../../src/units/shareText.ts';

it.each([
  [0, '1 %'],
  [0.854, '86 %'],
  [1, '100 %'],
  [1.0001, '101 %'],
  [10, '1000 %'],
  [10.001, 'more than 1000 %'],
  [1e30, 'more than 1000 %'],
  [Infinity, 'more than 1000 %'],
])('[U26] %f of what something may bear is %s', (share, text) => {
  expect(shareText(share)).toBe(text);
});
