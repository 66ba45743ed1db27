import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cornerNames, endNames } from '../../../src/engine/ties/cornerNames.ts';

const at = (...places: readonly (readonly [number, number])[]) =>
  places.map(([x, y]) => ({ x, y }));

describe('cornerNames', () => {
  it('[P32] names the corners of a house by the compass, however long it is and which way it is drawn', () => {
    const house = at([0, 0], [900, 0], [900, 120], [0, 120]);
    expect(cornerNames(house)).toEqual(['SW corner', 'SE corner', 'NE corner', 'NW corner']);
    expect(cornerNames(house.toReversed())).toEqual([
      'NW corner',
      'NE corner',
      'SE corner',
      'SW corner',
    ]);
    expect(cornerNames(at([0, -100], [100, 0], [0, 100], [-100, 0]))).toEqual([
      'S corner',
      'E corner',
      'N corner',
      'W corner',
    ]);
  });

  it('[P32] counts corners between those clockwise, the same from either way of drawing', () => {
    // a notch in the northeast
    const house = at([0, 0], [300, 0], [300, 200], [240, 200], [240, 300], [0, 300]);
    const names = cornerNames(house);
    expect(names).toEqual([
      'SW corner',
      'SE corner',
      'E corner',
      'next corner clockwise from NE',
      'NE corner',
      'NW corner',
    ]);
    expect(cornerNames(house.toReversed()).toReversed()).toEqual(names);
  });

  it('[P32] gives no two corners one name', () => {
    const ring = fc.uniqueArray(
      fc.tuple(fc.integer({ min: -50, max: 50 }), fc.integer({ min: -50, max: 50 })),
      { minLength: 3, maxLength: 14, selector: String },
    );
    fc.assert(
      fc.property(ring, (places) => {
        const names = cornerNames(at(...places));
        expect(new Set(names).size).toBe(places.length);
      }),
    );
  });

  it('[P32] names the ends of an open line', () => {
    expect(endNames(at([0, 0], [50, 3], [100, 0]))).toEqual([
      'W end',
      'mark 1 from the W end',
      'E end',
    ]);
    expect(endNames([])).toEqual([]);
  });
});
