import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { outOfRectangle } from '../../../src/engine/squaring/outOfRectangle.ts';
import {
  outByRounding,
  outOfSquare,
  squareAcross,
} from '../../../src/engine/squaring/squareAcross.ts';
import { triplesIn } from '../../../src/engine/squaring/triplesIn.ts';
import { distance } from '../../../src/geometry/distance.ts';
import { formatLength } from '../../../src/units/formatLength.ts';
import { inches } from '../../../src/units/inches.ts';

const foot = 12;
const feet = (value: number) => inches(value * foot);
const style = { system: 'feet', fraction: 16 } as const;
const millimetres = { system: 'mm', fraction: 16 } as const;

const inFeet = (legs: readonly [number, number], tape: number): string[] =>
  triplesIn({ legs: [feet(legs[0]), feet(legs[1])], tape: feet(tape) }, feet(1)).map(
    ({ short, long, across }) => [short, long, across].map((side) => side / foot).join('-'),
  );

describe('3-4-5', () => {
  it('[Y10] has the multiples that are published for setting out', () => {
    // 6-8-10 and 9-12-15: common practice, no published source
    expect(inFeet([6, 8], 10)).toEqual(['6-8-10', '3-4-5']);
    expect(inFeet([9, 12], 15)).toContain('9-12-15');
    // 24-32-40: plot layout of Noble Foundation, Raised Bed Gardening, PrintLayout_1_90432_90432
    expect(inFeet([24, 32], 40)[0]).toBe('24-32-40');
    expect(inFeet([15, 20], 25)[0]).toBe('15-20-25');
    // 30-40-50, a 40 ft base and an 80 ft tape held at its 50 ft mark: To set out a right angle, read at
    // informationbest.com/books-online/ggold10/ggold10_to_set_out_a.html
    expect(inFeet([30, 40], 80)[0]).toBe('30-40-50');
  });

  it('[Y10] fits in the legs, whichever is the longer, and in the tape; the largest first', () => {
    expect(inFeet([40, 30], 100)).toEqual([
      '30-40-50',
      '24-32-40',
      '18-24-30',
      '15-20-25',
      '12-16-20',
    ]);
    expect(inFeet([40, 30], 49)[0]).toBe('27-36-45');
    expect(inFeet([40, 2.9], 100)).toEqual([]);
    expect(inFeet([Number.NaN, 30], 100)).toEqual([]);
    fc.assert(
      fc.property(
        fc.tuple(fc.double({ min: 1, max: 3000 }), fc.double({ min: 1, max: 3000 })),
        fc.double({ min: 1, max: 3000 }),
        fc.constantFrom(12, 500 / 25.4),
        ([a, b], tape, unit) => {
          const room = { legs: [inches(a), inches(b)], tape: inches(tape) } as const;
          for (const { short, long, across } of triplesIn(room, inches(unit))) {
            expect(short).toBeLessThanOrEqual(Math.min(a, b) + 1e-6);
            expect(long).toBeLessThanOrEqual(Math.max(a, b) + 1e-6);
            expect(across).toBeLessThanOrEqual(tape + 1e-6);
            expect(short ** 2 + long ** 2).toBeCloseTo(across ** 2, 4);
          }
        },
      ),
    );
  });

  it('[Y10] comes in half metres where the tape has metres', () => {
    const metre = 1000 / 25.4;
    const room = {
      legs: [inches(6.1 * metre), inches(9 * metre)],
      tape: inches(30 * metre),
    } as const;
    const [first] = triplesIn(room, inches(metre / 2));
    const written = [first?.short, first?.long, first?.across].map((side) =>
      formatLength(side ?? inches(0), millimetres),
    );
    expect(written).toEqual(['6000 mm', '8000 mm', '10000 mm']);
  });
});

describe('the diagonal of a rectangle', () => {
  it('[Y11] of 60 by 100 ft is 116 ft and six tenths', () => {
    // a published layout of 60 by 100 ft words its diagonal, the root of 13,600, as 116 ft and six tenths;
    // that equal diagonals are square: US Army text, Figure 1-35 (EH = FG), armyengineer.tpub.com/en0069a
    expect(squareAcross(feet(60), feet(100)) / foot).toBeCloseTo(Math.sqrt(13_600), 9);
    expect(squareAcross(feet(60), feet(100)) / foot).toBeCloseTo(116.619, 3);
    expect(formatLength(squareAcross(feet(60), feet(100)), style)).toBe(`116'-7 7/16"`);
    expect(formatLength(squareAcross(feet(60), feet(100)), millimetres)).toBe('35545 mm');
  });

  it('[Y11] as it is written on a tape puts the corner out by less than its share of the step', () => {
    expect(outByRounding(feet(30), feet(40), style)).toBe(0);
    const sides = fc.double({ min: 36, max: 2400, noNaN: true });
    fc.assert(
      fc.property(sides, sides, (base, leg) => {
        const out = outByRounding(inches(base), inches(leg), style);
        // half a 16th across, and the end of the leg goes by across / base as much
        const across = Math.hypot(base, leg);
        expect(out).toBeLessThanOrEqual((1 / 32) * (across / base) + 1 / 2048 / base + 1e-9);
      }),
    );
  });
});

describe('what is out of square', () => {
  const angle = fc.double({ min: 0.2, max: Math.PI - 0.2, noNaN: true });
  const sides = fc.double({ min: 36, max: 2400, noNaN: true });

  it('[Y12] a leg that leans along its base by so much is found to', () => {
    fc.assert(
      fc.property(sides, sides, angle, (base, leg, turn) => {
        const end = { x: leg * Math.cos(turn), y: leg * Math.sin(turn) };
        const across = inches(distance({ x: base, y: 0 }, end));
        const out = outOfSquare({ base: inches(base), leg: inches(leg), across }, style);
        expect(out.ok ? out.value : NaN).toBeCloseTo(end.x, 6);
      }),
    );
  });

  it('[Y12] three lengths that make no triangle are one line', () => {
    const sought = { base: feet(40), leg: feet(30), across: feet(80) };
    expect(outOfSquare(sought, style)).toEqual({
      ok: false,
      reason: `Across 80'-0": expected from 10'-0" to 70'-0" with these two legs`,
    });
  });

  it('[Y13] a far side that slid by so much is found to, and equal diagonals are square', () => {
    fc.assert(
      fc.property(sides, sides, angle, (base, side, turn) => {
        const slid = side * Math.cos(turn);
        const [d, c] = [
          { x: slid, y: side * Math.sin(turn) },
          { x: base + slid, y: side * Math.sin(turn) },
        ];
        const found = outOfRectangle({
          base: inches(base),
          side: inches(side),
          ac: inches(distance({ x: 0, y: 0 }, c)),
          bd: inches(distance({ x: base, y: 0 }, d)),
        });
        expect(found.slid).toBeCloseTo(slid, 6);
        expect(found.misfit).toBeCloseTo(0, 6);
      }),
    );
    const across = squareAcross(feet(60), feet(100));
    const equal = outOfRectangle({ base: feet(60), side: feet(100), ac: across, bd: across });
    expect(equal).toEqual({ slid: 0, misfit: 0 });
  });

  it('[Y13] diagonals that no such sides have are said to misfit by so much', () => {
    const across = squareAcross(feet(60), feet(100));
    const longer = inches(across + 6);
    const found = outOfRectangle({ base: feet(60), side: feet(100), ac: longer, bd: longer });
    expect(found.slid).toBe(0);
    expect(found.misfit).toBeCloseTo(6, 9);
  });
});
