import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatLength } from '../../src/units/formatLength.ts';
import { inches } from '../../src/units/inches.ts';
import { parseLengths } from '../../src/units/parseLengths.ts';

describe('parseLengths', () => {
  it('[U11] reads a list with commas or semicolons, in the order of the text', () => {
    const read = { ok: true, value: [1.75, 1.875, 2] };
    expect(parseLengths('1 3/4, 1 7/8, 2')).toEqual(read);
    expect(parseLengths('1-3/4";1 7/8;2"')).toEqual(read);
    expect(parseLengths('2')).toEqual({ ok: true, value: [2] });
    expect(parseLengths('254, 508 mm', 'mm')).toEqual({ ok: true, value: [10, 20] });
  });

  it('[U11] reads back every list that was written', () => {
    const style = { system: 'feet', fraction: 32 } as const;
    const steps = fc.array(fc.integer({ min: 0, max: 4000 }), { minLength: 1, maxLength: 24 });
    fc.assert(
      fc.property(steps, (all) => {
        const lengths = all.map((n) => inches(n / 32));
        const text = lengths.map((length) => formatLength(length, style)).join(', ');
        expect(parseLengths(text)).toEqual({ ok: true, value: lengths });
      }),
    );
  });

  it.each([
    ['1 3/4,, 2', '“” is empty'],
    ['', '“” is empty'],
    ['2, two', '“two”'],
    [Array.from({ length: 25 }, () => '2').join(','), 'at most 24 lengths'],
  ])('[U11] refuses %j in one line that names what is wrong', (text, says) => {
    const read = parseLengths(text);
    expect(read.ok ? '' : read.reason).toContain(says);
    expect(read.ok ? '' : read.reason).not.toContain('\n');
  });
});
