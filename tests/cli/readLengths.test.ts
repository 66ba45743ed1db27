import { describe, expect, it } from 'vitest';
import { readLengths } from '../../src/cli/readLengths.ts';

describe('readLengths', () => {
  it('reads each in its own unit, a bare number as inches', () => {
    expect(readLengths('leaf', ['56 7/8', '4ft', '127mm', '9'])).toEqual({
      ok: true,
      value: [56.875, 48, 5, 9],
    });
  });

  it('reads every notation of a tape, a sheet and a phone', () => {
    const same = ['56 1/4', '56-1/4"', '56¼″', `4'-8 1/4"`, `4' 8.25`, '4′ 8 ¼″', '56.25in'];
    const tenths = ['1428.75mm', '1.42875 m', '142.875cm'];
    const told = readLengths('leaf', [...same, ...tenths]);
    expect(told).toEqual({ ok: true, value: [...same, ...tenths].map(() => 56.25) });
    expect(readLengths('leaf', ["12.25'", '52800 ft'])).toEqual({
      ok: true,
      value: [147, 633_600],
    });
  });

  it.each([
    ['wide', '--leaf: “wide” is not a length'],
    ['0', '--leaf: “0” is not above zero: expected a length that is'],
    ['-4', '--leaf: “-4” is not above zero: expected a length that is'],
    ['52801ft', '--leaf: “52801ft” is too long: expected at most ten miles'],
    ['\u001b[31m4', '--leaf: “�[31m4” is not a length'],
  ])('names the option and quotes “%s”', (text, reason) => {
    const lengths = readLengths('leaf', ['4', text]);
    expect(lengths.ok ? '' : lengths.reason).toContain(reason);
  });
});
