import { expect, it } from 'vitest';
import { isolatedPoles, soils, weakestSoil } from '../../src/trade/soils.ts';

it('[T19] the soil table is that of the building code, whole', () => {
  // IBC 2012 Table 1806.2, as what-when-how.com, Geotechnical Earthquake Engineering 484, prints it
  expect(soils.map(({ bearing, lateral }) => [bearing, lateral])).toEqual([
    [12_000, 1_200],
    [4_000, 400],
    [3_000, 200],
    [2_000, 150],
    [1_500, 100],
  ]);
  expect(weakestSoil.name).toBe('clay');
});

it('[T19] an isolated pole that half an inch does not harm counts on twice as much', () => {
  // IBC 1806.3.4, as a factor of 2 in scribd.com/document/560795266
  expect(isolatedPoles.factor).toBe(2);
});
