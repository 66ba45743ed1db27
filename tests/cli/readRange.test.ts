import { describe, expect, it } from 'vitest';
import { readRange } from '../../src/cli/readRange.ts';

describe('readRange', () => {
  it.each([
    ['1 5/8..1 7/8', 1.625, 1.875],
    ['2 1/2', 2.5, 2.5],
    ['2 1/2..2 1/2', 2.5, 2.5],
    ['1 5/8 to 1 7/8', 1.625, 1.875],
    ['0..3', 0, 3],
    ['25.4..50.8mm', 1, 2],
    ['2.54 cm .. 50.8 mm', 1, 2],
  ])('reads “%s”', (text, low, high) => {
    expect(readRange('hinge', text)).toEqual({ ok: true, value: { low, high } });
  });

  it.each([
    ['3..2', '--hinge: “3..2” falls'],
    ['1..2..3', '--hinge: “1..2..3” is not a range'],
    ['..2', '--hinge: “..2” has one end only: expected two lengths, such as 1 3/4..2'],
    ['1..', '--hinge: “1..” has one end only'],
    ['-1..2', '--hinge: “-1..2” is below zero: expected zero or more'],
    ['1..99999ft', '--hinge: “1..99999ft” is too long: expected at most ten miles'],
    ['one..2', '--hinge: “one” is not a length'],
  ])('refuses “%s” in one line', (text, reason) => {
    const range = readRange('hinge', text);
    expect(range.ok ? '' : range.reason).toContain(reason);
  });
});
