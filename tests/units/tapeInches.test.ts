import { expect, it } from 'vitest';
import { tapeInches } from '../../src/units/tapeInches.ts';

it.each([
  ['10 1/2', 10.5],
  ['10-1/2 "', 10.5],
  [`9'`, 108],
  [`9 ' 10`, 118],
  ['9 ft - 10 in', 118],
  ['1/2 ft', 6],
])('[U1] reads %s as %d in', (text, expected) => {
  expect(tapeInches(text)).toEqual({ ok: true, value: expected });
});

it.each([
  ['', 'is not a length'],
  [`'`, 'is not a length'],
  ['-4', 'is not a length'],
  ['4/0', 'divides by zero'],
  [`4/0'`, 'divides by zero'],
  [`3' 2 7/7`, 'has a fraction that is not under 1'],
  [`3.5' 2`, 'has part of a foot and then inches'],
])('[U5] says why it refuses “%s”', (text, reason) => {
  expect(tapeInches(text)).toEqual({ ok: false, reason });
});
