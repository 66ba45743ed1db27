import { expect, it } from 'vitest';
import { bestRadius } from '../../../src/engine/walk/meanPosition.ts';
import { roughText } from '../../../src/engine/walk/roughText.ts';
import { inches } from '../../../src/units/inches.ts';

const feet = { system: 'feet', fraction: 16 } as const;
const metric = { system: 'mm', fraction: 16 } as const;

it('[Y4] is whole feet or metres, rounded up', () => {
  expect(roughText(inches(144), feet)).toBe('12 ft');
  expect(roughText(inches(145), { ...feet, system: 'decimal feet' })).toBe('13 ft');
  expect(roughText(bestRadius, feet)).toBe('17 ft');
  expect(roughText(bestRadius, metric)).toBe('5 m');
  expect(roughText(inches(8 / 0.0254), { ...metric, system: 'm' })).toBe('8 m');
  expect(roughText(inches(0.1), feet)).toBe('1 ft');
});
