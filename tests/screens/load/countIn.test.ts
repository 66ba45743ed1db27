import { describe, expect, it } from 'vitest';
import { countIn } from '../../../src/screens/load/countIn.ts';

describe('countIn', () => {
  it.each(['1', ' 12 ', '1000', '0007'])('takes %s', (text) => {
    expect(countIn(text)).toEqual({ ok: true, value: Number(text) });
  });

  it.each(['', '0', '1001', '1.5', '-3', 'two', '1e2', '12345'])(
    'refuses %o in one line',
    (text) => {
      expect(countIn(text)).toMatchObject({
        ok: false,
        reason: `How many “${text}”: expected a whole number from 1 to 1000`,
      });
    },
  );
});
