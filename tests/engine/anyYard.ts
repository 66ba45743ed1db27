import fc from 'fast-check';
import type { Site } from '../../src/site/site.ts';
import { bare, fence, gateOn } from './plainYard.ts';

const grid = fc.integer({ min: -60, max: 60 }).map((n) => n * 36);
const spot = fc.tuple(grid, grid);
const anchor = fc.record({
  from: fc.constantFrom('start' as const, 'end' as const, 'middle' as const),
  // sixteenths, so that a place is what a tape gives
  offset: fc.integer({ min: 0, max: 16 * 400 }).map((n) => n / 16),
});
const gate = fc.record({
  leg: fc.nat(20),
  anchor,
  leaves: fc.constantFrom(1 as const, 2 as const),
});

/** A yard of one fence line with up to nine legs and four gates, some of which do not fit. */
export const anyYard: fc.Arbitrary<Site> = fc
  .record({
    spots: fc.uniqueArray(spot, { minLength: 3, maxLength: 10, selector: String }),
    how: fc.constantFrom('open' as const, 'closed' as const),
    gates: fc.array(gate, { maxLength: 4 }),
  })
  .map(({ spots, how, gates }) => {
    const legs = how === 'closed' ? spots.length : spots.length - 1;
    return gates.reduce(
      (site, wish) => gateOn(site, wish.leg % legs, wish.anchor, wish.leaves),
      fence(bare, spots, how),
    );
  });
