import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anchorFrom, anchorNear } from '../../src/editor/gateAnchor.ts';
import type { GateWish } from '../../src/editor/gateAnchor.ts';
import type { LengthSystem } from '../../src/units/lengthStyle.ts';
import { inches } from '../../src/units/inches.ts';

const wish = (station: number, change: Partial<GateWish> = {}): GateWish => ({
  length: inches(480),
  station: inches(station),
  span: inches(50.375),
  reach: inches(6),
  system: 'feet',
  ...change,
});

const system = fc.constantFrom<LengthSystem>('feet', 'inches', 'decimal feet', 'mm', 'm');
const number = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });

describe('gateAnchor', () => {
  it('[E5] is centred near the middle and measured from the nearer end elsewhere', () => {
    expect(anchorNear(wish(243))).toEqual({ from: 'middle', offset: 0 });
    expect(anchorNear(wish(100))).toEqual({ from: 'start', offset: 75 });
    expect(anchorNear(wish(400))).toEqual({ from: 'end', offset: 55 });
  });

  it('[E5] stands at the end mark itself within reach of it and never beyond', () => {
    expect(anchorNear(wish(28))).toEqual({ from: 'start', offset: 0 });
    expect(anchorNear(wish(-200))).toEqual({ from: 'start', offset: 0 });
    expect(anchorNear(wish(900))).toEqual({ from: 'end', offset: 0 });
  });

  it('[E5] counts in whole inches, tenths of a foot or whole centimetres', () => {
    const offset = (unit: LengthSystem) => anchorNear(wish(100, { system: unit })).offset;
    expect(offset('inches')).toBe(75);
    expect(offset('decimal feet')).toBeCloseTo(6.2 * 12, 9);
    expect(offset('m') * 2.54).toBeCloseTo(190, 9);
    expect(offset('mm') * 2.54).toBeCloseTo(190, 9);
  });

  it('[E5] keeps the end that it is measured from and the gate on its leg', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('start', 'end', 'middle'),
        number(-100, 700),
        number(20, 600),
        system,
        (from, station, span, unit) => {
          const one = wish(station, { span: inches(span), system: unit });
          const anchor = anchorFrom(from, one);
          expect(anchor.from).toBe(from);
          const middles = {
            start: anchor.offset + span / 2,
            end: 480 - anchor.offset - span / 2,
            middle: 240 + anchor.offset,
          };
          if (span <= 480) {
            expect(middles[from] - span / 2).toBeGreaterThanOrEqual(-1e-9);
            expect(middles[from] + span / 2).toBeLessThanOrEqual(480 + 1e-9);
          } else expect(anchor.offset).toBe(0);
        },
      ),
    );
  });

  it('[E5] lies no farther from the hand than the reach or half a step', () => {
    fc.assert(
      fc.property(number(40, 440), (station) => {
        const { from, offset } = anchorNear(wish(station));
        const middle = {
          start: offset + 50.375 / 2,
          end: 480 - offset - 50.375 / 2,
          middle: 240 + offset,
        }[from];
        expect(Math.abs(middle - station)).toBeLessThanOrEqual(6);
      }),
    );
  });

  it('[E5] a gate longer than its leg is centred', () => {
    expect(anchorNear(wish(10, { span: inches(500) }))).toEqual({ from: 'middle', offset: 0 });
  });
});
