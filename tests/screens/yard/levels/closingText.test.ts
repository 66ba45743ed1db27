import { expect, it } from 'vitest';
import type { LevelClosing } from '../../../../src/engine/ground/levelBook.ts';
import { closingText } from '../../../../src/screens/yard/levels/closingText.ts';
import { rodStyle } from '../../../../src/screens/yard/levels/rodStyle.ts';
import { inches } from '../../../../src/units/inches.ts';

const feet = { system: 'decimal feet', fraction: 8 } as const;
const closing = (over: number, allowable: number | null): LevelClosing => ({
  known: inches(0),
  reached: inches(over),
  misclosure: inches(over),
  allowable: allowable === null ? null : inches(allowable),
  spread: allowable !== null && Math.abs(over) > allowable ? 'not' : 'setups',
});

it('says how far off the levels closed, which way, and what became of it', () => {
  expect(closingText(closing(0.24, 0.36), feet)).toBe(
    "Closes 0.02' high, 0.03' allowed; spread evenly over the setups.",
  );
  expect(closingText(closing(-1.2, 0.36), feet)).toBe(
    "Closes 0.10' low, 0.03' allowed; not spread: level it again, or allow more.",
  );
  expect(closingText(closing(0.24, null), feet)).toMatch(/nobody has said how much is allowed/);
  expect(closingText(closing(0, null), feet)).toBe('Closes exactly.');
});

it('says what is missing where the run closes on nothing', () => {
  expect(closingText(null, feet)).toMatch(/does not close: a last foresight/);
});

it('a rod is read in hundredths of a foot, or in metres', () => {
  const read = (system: 'feet' | 'inches' | 'decimal feet' | 'mm' | 'm') =>
    rodStyle({ system, fraction: 8 }).system;
  expect([read('feet'), read('inches'), read('decimal feet')]).toEqual(
    Array.from({ length: 3 }, () => 'decimal feet'),
  );
  expect([read('mm'), read('m')]).toEqual(['m', 'm']);
});
