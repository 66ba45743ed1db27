import { expect, it } from 'vitest';
import { afterKey, type KeypadKey } from '../../src/screens/yard/keypad.ts';
import { parseLength } from '../../src/units/parseLength.ts';

const typed = (...keys: readonly KeypadKey[]): string =>
  keys.reduce<string>((text, key) => afterKey(text, key), '');

it('writes lengths that are read as meant', () => {
  const cases = [
    [['9', "'", '1', '0', '1/2', '"'], 118.5],
    [['5', '6', '7/8'], 56.875],
    [['9', "'", '-', '1/4'], 108.25],
    [['3', '0', '0', '5', 'mm'], 3005 / 25.4],
    [['1', '2', '.', '2', '5', "'"], 147],
    [['3/4'], 0.75],
  ] as const;
  for (const [keys, expected] of cases) {
    expect(parseLength(typed(...keys))).toEqual({ ok: true, value: expected });
  }
});

it('takes a fraction or a unit away whole, and anything else sign by sign', () => {
  expect(typed('5', '6', '7/8', 'back')).toBe('56');
  expect(typed('5', 'mm', 'back', 'back')).toBe('');
  expect(typed('back')).toBe('');
  expect(typed('1', '2', 'back')).toBe('1');
});
