import { expect, it } from 'vitest';
import { placeText } from '../../../src/engine/survey/placeText.ts';
import { inches } from '../../../src/units/inches.ts';

it('[V21] is told rounded up to what the site writes, and never as nothing', () => {
  const told = (error: number, system: 'feet' | 'inches' | 'decimal feet' | 'mm' | 'm') =>
    placeText(inches(error), { system, fraction: 16 });
  expect(told(0.5, 'feet')).toBe('Its place on the ground is known to ±1/2" by the tapes');
  expect(told(0.51, 'feet')).toBe('Its place on the ground is known to ±9/16" by the tapes');
  expect(told(13, 'feet')).toBe(`Its place on the ground is known to ±1'-1" by the tapes`);
  expect(told(1e-6, 'inches')).toBe('Its place on the ground is known to ±1/16" by the tapes');
  expect(told(0.5, 'mm')).toBe('Its place on the ground is known to ±13 mm by the tapes');
  expect(told(0.5, 'm')).toBe('Its place on the ground is known to ±0.013 m by the tapes');
  expect(told(0.5, 'decimal feet')).toBe(`Its place on the ground is known to ±0.05' by the tapes`);
});
