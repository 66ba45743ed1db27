import { describe, expect, it } from 'vitest';
import { readLengths } from '../../src/cli/readLengths.ts';

describe('readLengths', () => {
  it('reads each in its own unit, a bare number as inches', () => {
    expect(readLengths('leaf', ['56 7/8', '4ft', '127mm', '9'])).toEqual({
      ok: true,
      value: [56.875, 48, 5, 9],
    });
  });

  it.each([
    ['wide', '--leaf: “wide” is not a length'],
    ['0', '--leaf: “0” is not above zero'],
    ['-4', '--leaf: “-4” is not above zero'],
  ])('names the option and quotes “%s”', (text, reason) => {
    const lengths = readLengths('leaf', ['4', text]);
    expect(lengths.ok ? '' : lengths.reason).toContain(reason);
  });
});
