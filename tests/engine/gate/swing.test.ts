import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openingOf } from '../../../src/engine/gate/openingOf.ts';
import { leafLayouts, leafTip } from '../../../src/engine/gate/swing.ts';
import { termsOf } from '../../../src/engine/gate/termsOf.ts';
import { distance } from '../../../src/geometry/distance.ts';
import { moved } from '../../../src/geometry/moved.ts';
import type { SitePoint } from '../../../src/geometry/point.ts';
import type { Gate } from '../../../src/site/gate.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
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
const hung = (gate: Gate, angle = 0, site: Site = bare) => {
  const opening = openingOf(termsOf(gate, site));
  const bearing = radians(angle);
  const start: SitePoint = { x: 0, y: 0 };
  const doorway = { start, end: moved(start, bearing, opening.target), bearing };
  return { opening, doorway, leaves: leafLayouts(site, gate, opening, doorway) };
};

const anyGate = fc.record({
  leaves: fc.constantFrom(1 as const, 2 as const),
  hingedAt: fc.constantFrom('start' as const, 'end' as const),
  opens: fc.constantFrom('left' as const, 'right' as const),
  turns: fc.integer({ min: 1, max: 180 }).map((n) => radians((n * Math.PI) / 180)),
});
const anyAngle = fc.integer({ min: -179, max: 180 }).map((n) => (n * Math.PI) / 180);

const withPin = (pin: number): Site => ({
  ...bare,
  hardware: {
    ...bare.hardware,
    'hardware:hinge': { ...bare.hardware['hardware:hinge']!, pin: inches(pin) },
  },
});

describe('leafLayouts', () => {
  it('[O5] a closed leaf ends one latch gap from what it latches to', () => {
    fc.assert(
      fc.property(anyGate, anyAngle, ({ leaves: count, turns, ...change }, angle) => {
        const gate = gateOf(count, { ...change, way: { kind: 'swing', turns } });
        const { opening, doorway, leaves } = hung(gate, angle);
        const latch = opening.terms.find(({ role }) => role === 'latch');
        const tips = leaves.map((leaf) => leafTip(leaf, radians(0)));
        const far = gate.hingedAt === 'start' ? doorway.end : doorway.start;
        const [first, second] = tips;
        if (first === undefined) throw new Error('no leaf');
        expect(distance(first, second ?? far)).toBeCloseTo(latch?.planned ?? NaN, 9);
      }),
    );
  });

  it('[O5] every leaf turns by what the gate says, to the side that it says', () => {
    fc.assert(
      fc.property(anyGate, anyAngle, ({ leaves: count, turns, ...change }, angle) => {
        const gate = gateOf(count, { ...change, way: { kind: 'swing', turns } });
        for (const leaf of hung(gate, angle).leaves) {
          const [from, to] = [leafTip(leaf, radians(0)), leafTip(leaf, leaf.turns)];
          const reach = leaf.hung + leaf.width;
          // the chord of the turn
          expect(distance(from, to)).toBeCloseTo(2 * reach * Math.sin(turns / 2), 9);
          expect(Math.cos(leaf.open - leaf.closed)).toBeCloseTo(Math.cos(turns), 9);
          // to the left of the leg's direction is positive
          const side =
            Math.cos(angle) * (to.y - leaf.hinge.y) - Math.sin(angle) * (to.x - leaf.hinge.x);
          expect(side).toBeCloseTo(reach * Math.sin(turns) * (gate.opens === 'left' ? 1 : -1), 6);
        }
      }),
    );
  });

  it('[O5] a leaf turns about the pin of its hinge, half way to its frame where nobody says', () => {
    // hinge 1 7/8, leaf 44, latch 2 1/8: 48 in
    const [assumed] = hung(gateOf(1)).leaves;
    expect(assumed).toMatchObject({ pin: 'assumed', hinge: { x: 0.9375 }, hung: 0.9375 });
    const [said] = hung(gateOf(1, { hingedAt: 'end' }), 0, withPin(0.5)).leaves;
    expect(said).toMatchObject({ pin: 'said', hinge: { x: 47.5 }, hung: 1.375 });
    const [slip] = hung(gateOf(1), 0, withPin(9)).leaves;
    expect(slip).toMatchObject({ hinge: { x: 1.875 }, hung: 0 });
  });

  // ASTM F900, from memory: 1.660 up to 8 ft wide and 6 ft high, else 1.900
  it('[O5] a leaf is as thick as its frame, said or usual', () => {
    const thick = (change: Partial<Gate['leaves']['leaf:1']>) => {
      const gate = gateOf(1);
      const [[id, leaf]] = Object.entries(gate.leaves) as [['leaf:1', Gate['leaves']['leaf:1']]];
      return hung({ ...gate, leaves: { [id]: { ...leaf, ...change } } }).leaves[0]?.thickness;
    };
    expect(thick({})).toBe(1.66);
    expect(thick({ height: inches(84) })).toBe(1.9);
    expect(thick({ frame: { label: '', od: inches(2), wall: inches(0.1) } })).toBe(2);
  });
});
