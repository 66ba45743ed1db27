import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseDecimal } from '../../src/units/parseDecimal.ts';

const limits = { low: 0, high: 1000 };

describe('parseDecimal', () => {
  it('[U27] reads every number of up to six decimals within its limits as it is written', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1_000_000_000 }), (millionths) => {
        const value = millionths / 1_000_000;
        expect(parseDecimal(value.toFixed(6), limits)).toEqual({ ok: true, value });
      }),
    );
    expect(parseDecimal(' 4 ', { low: 1, high: 100 })).toEqual({ ok: true, value: 4 });
  });

  it.each([
    ['0,5', 'expected a point before the decimals, as in 0.5; found “0,5”'],
    ['1,250', 'expected a point before the decimals, as in 0.5; found “1,250”'],
    ['', 'expected a number from 0 to 1000 such as 1.5, found nothing'],
    ['-1', 'expected a number from 0 to 1000 such as 1.5, found “-1”'],
    ['1000.5', 'expected a number from 0 to 1000 such as 1.5, found “1000.5”'],
    ['1e2', 'expected a number from 0 to 1000 such as 1.5, found “1e2”'],
    ['half', 'expected a number from 0 to 1000 such as 1.5, found “half”'],
  ])('[U27] %j is refused in one line', (text, reason) => {
    expect(parseDecimal(text, limits)).toEqual({ ok: false, reason });
  });
});
