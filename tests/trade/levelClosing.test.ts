import { expect, it } from 'vitest';
import { closingOver, levelClosings } from '../../src/trade/levelClosing.ts';
import { inches } from '../../src/units/inches.ts';

it('[T17] third order allows 12 mm over a kilometre and twice that over four', () => {
  // FGCS Standards and Specifications for Geodetic Control Networks (1984); from memory
  const [third] = levelClosings;
  if (third === undefined) throw new Error('expected a rule');
  const kilometre = 1e6 / 25.4;
  expect(closingOver(third, inches(kilometre)) * 25.4).toBeCloseTo(12, 9);
  expect(closingOver(third, inches(4 * kilometre)) * 25.4).toBeCloseTo(24, 9);
  expect(closingOver(third, inches(0))).toBe(0);
});

it('[T17] ordinary levels allow 0.1 ft over a mile', () => {
  // survey handbooks, ordinary levelling; from memory
  const rule = levelClosings.find(({ name }) => name === 'ordinary levels');
  expect(rule && closingOver(rule, inches(63_360)) / 12).toBeCloseTo(0.1, 9);
});
