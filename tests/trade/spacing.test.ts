import { expect, it } from 'vitest';
import { maxSpacing } from '../../src/trade/spacing.ts';

it('[T7] line posts stand at most 10 ft apart, as ASTM F567-07 4.1 has it', () => {
  expect(maxSpacing.length / 12).toBe(10);
  expect(maxSpacing.source).toEqual({ text: 'ASTM F567-07 4.1', status: 'published' });
});
