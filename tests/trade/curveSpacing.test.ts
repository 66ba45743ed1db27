import { expect, it } from 'vitest';
import { curveSpacing } from '../../src/trade/curveSpacing.ts';
import { inches } from '../../src/units/inches.ts';

const feet = (radius: number): number => curveSpacing(inches(12 * radius)) / 12;

it('[T16] bays get shorter as the radius does: 10, 8, 6 and 5 ft', () => {
  // Tremonton UT 3.18.010: 10 ft on tangents and at 500 ft and over; 8 ft from 500 to 200 ft; 6 ft from
  // 200 to 100 ft; 5 ft at 100 ft and under
  const radii = [2000, 500, 499.9, 350, 200, 199.9, 150, 100.1, 100, 50, 1];
  expect(radii.map(feet)).toEqual([10, 10, 8, 8, 8, 6, 6, 6, 5, 5, 5]);
});
