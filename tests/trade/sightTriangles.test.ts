import { expect, it } from 'vitest';
import { heightZoneLimits } from '../../src/trade/heightZoneLimits.ts';
import { sightTriangles, usualSightLegs } from '../../src/trade/sightTriangles.ts';

it('[T24] the towns stand side by side as their codes have them', () => {
  // municipal codes of the towns named: legs in feet, then solid, open and clear up to in inches
  const rows = sightTriangles.map(({ town, legs, solid, open, clearTo }) => [
    town,
    legs.map(({ length }) => length / 12),
    solid,
    open,
    clearTo,
  ]);
  expect(rows).toEqual([
    ['Dubuque IA', [10], 24, 24, 96],
    ['San Marcos TX', [25, 10], 30, 30, null],
    ['El Segundo CA', [10], 30, 30, null],
    ['Zanesville OH', [30, 10], 30, 42, null],
    ['Norfolk NE', [25], 36, 36, null],
    ['Woodridge IL', [25, 10], 36, 36, 96],
  ]);
  expect(sightTriangles.every(({ town, source }) => source.text.startsWith(town))).toBe(true);
});

it('[T24] what new ground starts with says that it is a default; a front yard has no published source', () => {
  for (const [first] of Object.values(heightZoneLimits))
    expect(first.source.text).toContain('a default');
  expect(heightZoneLimits['sight triangle'][0]).toMatchObject({ solid: 30, open: 30 });
  expect(heightZoneLimits['front yard'][0]).toMatchObject({
    solid: 48,
    open: 48,
    source: { status: 'practice' },
  });
  expect([usualSightLegs.streets, usualSightLegs.drive]).toEqual([300, 120]);
});
