import { expect, it } from 'vitest';
import { defaultToleranceZone, toleranceZones } from '../../src/trade/toleranceZones.ts';

it('[T15] a service is kept off by 18 in a side, wider where a state asks for it', () => {
  // CGA Best Practices 5.19; Florida and Minnesota 24 in; Michigan, MCL 460.723, 48 in
  expect(defaultToleranceZone.length).toBe(18);
  const lengths = toleranceZones.map(({ length }) => length);
  expect(lengths).toEqual([18, 24, 48]);
  expect(toleranceZones[0]).toBe(defaultToleranceZone);
});
