import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openingOf } from '../../../src/engine/gate/openingOf.ts';
import { leafLayouts } from '../../../src/engine/gate/swing.ts';
import { termsOf } from '../../../src/engine/gate/termsOf.ts';
import { distance } from '../../../src/geometry/distance.ts';
import { moved } from '../../../src/geometry/moved.ts';
import type { SitePoint } from '../../../src/geometry/point.ts';
import type { Gate } from '../../../src/site/gate.ts';
import { radians } from '../../../src/units/radians.ts';
import { bare, fence, gateOn } from '../plainYard.ts';

const gateOf = (leaves: 1 | 2, change: Partial<Gate> = {}): Gate => {
  const site = gateOn(
    fence(bare, [
      [0, 0],
      [600, 0],
    ]),
    0,
    { from: 'middle', offset: 0 },
    leaves,
  );
  return { ...Object.values(site.gates)[0]!, ...change };
};

/** The doorway of a gate whose first face stands at the origin. */
const hung = (gate: Gate, angle = 0) => {
  const opening = openingOf(termsOf(gate, bare));
  const bearing = radians(angle);
  const start: SitePoint = { x: 0, y: 0 };
  const doorway = { start, end: moved(start, bearing, opening.target), bearing };
  return { opening, doorway, leaves: leafLayouts(gate, opening, doorway) };
};

const anyGate = fc.record({
  leaves: fc.constantFrom(1 as const, 2 as const),
  hingedAt: fc.constantFrom('start' as const, 'end' as const),
  opens: fc.constantFrom('left' as const, 'right' as const),
});
const anyAngle = fc.integer({ min: -179, max: 180 }).map((n) => (n * Math.PI) / 180);

describe('leafLayouts', () => {
  it('[O5] a closed leaf ends one latch gap from what it latches to', () => {
    fc.assert(
      fc.property(anyGate, anyAngle, ({ leaves: count, ...change }, angle) => {
        const gate = gateOf(count, change);
        const { opening, doorway, leaves } = hung(gate, angle);
        const latch = opening.terms.find(({ role }) => role === 'latch');
        const tips = leaves.map(({ hinge, closed, width }) => moved(hinge, closed, width));
        const far = gate.hingedAt === 'start' ? doorway.end : doorway.start;
        const [first, second] = tips;
        if (first === undefined) throw new Error('no leaf');
        expect(distance(first, second ?? far)).toBeCloseTo(latch?.planned ?? NaN, 9);
      }),
    );
  });

  it('[O5] every leaf opens by a quarter, to the side that the gate says', () => {
    fc.assert(
      fc.property(anyGate, anyAngle, ({ leaves: count, ...change }, angle) => {
        const gate = gateOf(count, change);
        for (const { hinge, open, closed, width } of hung(gate, angle).leaves) {
          expect(Math.abs(Math.cos(open - closed))).toBeLessThan(1e-9);
          const tip = moved(hinge, open, width);
          // to the left of the leg's direction is positive
          const side = Math.cos(angle) * (tip.y - hinge.y) - Math.sin(angle) * (tip.x - hinge.x);
          expect(side).toBeCloseTo(gate.opens === 'left' ? width : -width, 9);
        }
      }),
    );
  });

  it('[O5] a single leaf hangs one hinge allowance from the post that it is hinged at', () => {
    // hinge 1 7/8, leaf 44, latch 2 1/8: 48 in
    expect(hung(gateOf(1)).leaves[0]?.hinge.x).toBe(1.875);
    expect(hung(gateOf(1, { hingedAt: 'end' })).leaves[0]?.hinge.x).toBe(48 - 1.875);
  });
});
