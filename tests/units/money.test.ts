import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addMoney, formatMoney, money, timesMoney, toCents } from '../../src/units/money.ts';
import { parseMoney } from '../../src/units/parseMoney.ts';

const amount = (text: string) => {
  const found = parseMoney(text);
  if (!found.ok) throw new Error(found.reason);
  return found.value;
};

describe('money', () => {
  it.each([
    ['12.50', '12.50'],
    ['0', '0.00'],
    ['1,234.5', '1,234.50'],
    ['1234567.89', '1,234,567.89'],
    ['0.035', '0.04'],
    ['0.034999', '0.03'],
  ])('[U20] %s is written %s', (text, written) => {
    expect(formatMoney(amount(text))).toBe(written);
  });

  it.each([
    ['12,50', 'expected a point before the decimals, as in 12.50; found “12,50”'],
    ['1.234,50', 'expected a point before the decimals, as in 12.50; found “1.234,50”'],
    ['-3', 'expected 0 or more, found “-3”'],
    ['$5', 'expected a price such as 12.50, found “$5”'],
    ['', 'expected a price such as 12.50, found “”'],
    ['1.2345678', 'expected a price such as 12.50, found “1.2345678”'],
  ])('[U20] “%s” is refused in one line', (text, reason) => {
    expect(parseMoney(text)).toEqual({ ok: false, reason });
  });

  it('[U21] adds and multiplies exactly, where binary fractions would not', () => {
    // 0.1 + 0.2 in binary is 0.30000000000000004
    expect(addMoney(amount('0.1'), amount('0.2'))).toBe(amount('0.3'));
    expect(timesMoney(amount('1.15'), 100)).toBe(amount('115'));
    expect(timesMoney(amount('0.333333'), 3)).toBe(amount('0.999999'));
    // halves go away from zero
    expect(formatMoney(money(5_000n))).toBe('0.01');
    expect(formatMoney(money(-5_000n))).toBe('-0.01');
    expect(() => timesMoney(amount('1'), NaN)).toThrow('expected a number');
  });

  it('[U21] what is written is read back, and cents add up', () => {
    const cents = fc.bigInt({ min: 0n, max: 10n ** 10n }).map((n) => money(n * 10_000n));
    fc.assert(
      fc.property(cents, cents, (a, b) => {
        expect(amount(formatMoney(a))).toBe(a);
        expect(toCents(addMoney(a, b))).toBe(addMoney(a, b));
      }),
    );
  });
});
