import { describe, expect, it } from 'vitest';
import { readRange } from '../../src/cli/readRange.ts';

describe('readRange', () => {
  it.each([
    ['1 5/8..1 7/8', 1.625, 1.875],
    ['2 1/2', 2.5, 2.5],
    ['2 1/2..2 1/2', 2.5, 2.5],
    ['0..3', 0, 3],
    ['25.4..50.8mm', 1, 2],
    ['2.54 cm .. 50.8 mm', 1, 2],
  ])('reads “%s”', (text, low, high) => {
    expect(readRange('hinge', text)).toEqual({ ok: true, value: { low, high } });
  });

  it.each([
    ['3..2', '--hinge: “3..2” falls'],
    ['1..2..3', '--hinge: “1..2..3” is not a range'],
    ['..2', '--hinge: '],
    ['1..', '--hinge: '],
    ['-1..2', '--hinge: “-1..2” is below zero'],
    ['one..2', '--hinge: “one” is not a length'],
  ])('refuses “%s” in one line', (text, reason) => {
    const range = readRange('hinge', text);
    expect(range.ok ? '' : range.reason).toContain(reason);
  });
});
