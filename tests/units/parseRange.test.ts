import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseRange } from '../../src/units/parseRange.ts';

describe('parseRange', () => {
  it.each([
    ['1 3/4..2', 1.75, 2],
    ['1¾″ .. 2″', 1.75, 2],
    ['2 1/2', 2.5, 2.5],
    ['2 1/2..2 1/2', 2.5, 2.5],
    [`9'-10"..10'`, 118, 120],
    ['1 3/4 to 2', 1.75, 2],
    ['40 TO 50.8mm', 40 / 25.4, 2],
    ['1 5/8" to 1 7/8"', 1.625, 1.875],
    ['-1..2', -1, 2],
    ['-2..-1', -2, -1],
    ['.5..1.5', 0.5, 1.5],
    ['25.4..50.8mm', 1, 2],
    ['2.54 .. 5.08 cm', 1, 2],
    ['−25.4..25.4 mm', -1, 1],
    [`9..10'`, 108, 120],
    ['9..10 ft.', 108, 120],
    ['2.54 cm .. 50.8 mm', 1, 2],
    ['1/2..25.4 mm', 0.5, 1],
  ])('[U8] reads %s', (text, low, high) => {
    expect(parseRange(text)).toEqual({ ok: true, value: { low, high } });
  });

  it('[U8] bare bounds are in the unit asked for', () => {
    expect(parseRange('9..10', 'feet')).toEqual({ ok: true, value: { low: 108, high: 120 } });
    expect(parseRange('9..10"', 'feet')).toEqual({ ok: true, value: { low: 9, high: 10 } });
    expect(parseRange('254', 'mm')).toEqual({ ok: true, value: { low: 10, high: 10 } });
  });

  it.each([
    ['2..1 3/4', '“2..1 3/4” falls: expected the smaller length first, such as 1 3/4..2'],
    ['1..2..3', '“1..2..3” is not a range: expected two lengths, such as 1 3/4..2'],
    ['..2', '“..2” has one end only: expected two lengths, such as 1 3/4..2'],
    ['1..', '“1..” has one end only: expected'],
    ['1 to 2..3', '“1 to 2..3” is not a range: expected'],
    ['', '“” is empty: expected'],
    ['one..2', '“one” is not a length: expected'],
    ['1..two', '“two” is not a length: expected'],
    ['1,5..2 mm', '“1,5” has a decimal comma: expected'],
    ['1...2', '“1...2” is not a range: expected'],
  ])('[U8] refuses %s in one line', (text, reason) => {
    const range = parseRange(text);
    expect(range.ok ? 'read' : range.reason).toContain(reason);
  });

  it('[U8] never throws; what is read never falls', () => {
    const signs = fc.constantFrom(...'0123456789/.- mt\'"½', '..', 'mm', 'ft');
    fc.assert(
      fc.property(fc.string({ unit: signs, maxLength: 10 }), (text) => {
        const range = parseRange(text);
        if (range.ok) expect(range.value.low).toBeLessThanOrEqual(range.value.high);
        else expect(range.reason).toMatch(/^“.*” .*expected [^\n]*$/);
      }),
      { numRuns: 2000 },
    );
  });
});
