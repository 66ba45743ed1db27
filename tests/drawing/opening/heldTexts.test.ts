import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heldTexts } from '../../../src/drawing/opening/heldTexts.ts';
import type { Opening } from '../../../src/engine/opening.ts';
import { heldBetween } from '../../engine/heldBetween.ts';
import type { LengthStyle } from '../../../src/units/lengthStyle.ts';
import { parseLength } from '../../../src/units/parseLength.ts';

const opening = (from: number, to: number): Opening => heldBetween(from, to, (from + to) / 2);
const eighths = { system: 'feet', fraction: 8 } as const;

describe('heldTexts', () => {
  it('[D26] what is written lies within what holds, whatever it is written in', () => {
    const system = fc.constantFrom(
      ...(['feet', 'inches', 'decimal feet', 'mm', 'm'] as const satisfies LengthStyle['system'][]),
    );
    const width = fc.double({ min: 10, max: 400, noNaN: true });
    const give = fc.double({ min: 0, max: 3, noNaN: true });
    fc.assert(
      fc.property(system, width, give, (own, from, more) => {
        const held = heldTexts(opening(from, from + more), { system: own, fraction: 8 });
        if (held === null) {
          expect(more).toBeLessThan(0.002);
          return;
        }
        const [low, high] = [parseLength(held.from), parseLength(held.to)];
        if (!low.ok || !high.ok)
          throw new Error(`expected two lengths, got ${JSON.stringify(held)}`);
        // a hundred-thousandth of an inch is forgiven
        expect(low.value).toBeGreaterThanOrEqual(from - 1e-5);
        expect(high.value).toBeLessThanOrEqual(from + more + 1e-5);
      }),
    );
  });

  it('[D26] rounds inwards to the marks of the tape', () => {
    expect(heldTexts(opening(47 + 7 / 16, 48 + 7 / 16), eighths)).toEqual({
      from: '3\'-11 1/2"',
      to: '4\'-0 3/8"',
    });
  });

  it('[D26] writes decimals where no mark of the tape lies between', () => {
    expect(heldTexts(opening(48.03, 48.06), eighths)).toEqual({ from: '48.030"', to: '48.060"' });
  });

  it.each(['mm', 'm'] as const)('[D150] writes decimals of a millimetre in %s', (system) => {
    // six feet are 1828.8 mm, as the inch is 25.4 mm by its definition
    expect(heldTexts(opening(72, 72), { system, fraction: 8 })).toEqual({
      from: '1828.80 mm',
      to: '1828.80 mm',
    });
  });

  it('[D26] is nothing where nothing holds for sure', () => {
    expect(heldTexts(opening(48.1, 48), eighths)).toBeNull();
  });
});
