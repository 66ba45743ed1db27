import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { orderOf } from '../../../src/engine/gate/orderOf.ts';
import { openingOf } from '../../../src/engine/gate/openingOf.ts';
import { termsOf } from '../../../src/engine/gate/termsOf.ts';
import { orderLeaves } from '../../../src/site/edits/orderLeaves.ts';
import { setLengths } from '../../../src/site/edits/setLengths.ts';
import { setShop } from '../../../src/site/edits/setShop.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { cantilever, gap, wayYard } from '../wayYard.ts';
import { gateOf, onlyGate, partOf } from '../set/setYard.ts';

const hinge = partOf('hinge', [1.625, 1.875, 1.875]);
const double = (...leaves: number[]): Site =>
  gateOf(leaves, { hinge, latch: partOf('drop rod', [2.5, 2.5, 3]) });
const widths = (order: ReturnType<typeof orderOf>) => order.leaves.map(({ width }) => width);
const target = (site: Site) => openingOf(termsOf(onlyGate(site), site)).target;

describe('leaves for a wanted opening', () => {
  it('[O4] 10 ft with hinges of 1 7/8 and a centre of 2 1/2 takes two leaves of 56 7/8', () => {
    // 120 - (2 × 1 7/8 + 2 1/2) = 113 3/4: sums of common practice, no published source
    const order = orderOf(double(50, 60), 'gate:1', inches(120));
    expect(widths(order)).toEqual([56.875, 56.875]);
    expect(order.opening.target).toBe(120);
    expect(order.opening.terms[1]?.source).toContain('catalogue');
  });

  it('[O4] rounded down to the shop, they make a narrower opening', () => {
    const site = setShop(double(50, 60), { leafStep: inches(0.5) });
    const order = orderOf(site, 'gate:1', inches(120));
    expect(widths(order)).toEqual([56.5, 56.5]);
    expect(order.opening.target).toBe(119.25);
  });

  it('[O4] unequal leaves stay as far apart where that is asked', () => {
    const order = orderOf(double(50, 60), 'gate:1', inches(120), 'as apart as now');
    // 113 3/4 less 10 is 103 3/4, half of it 51 7/8
    expect(widths(order)).toEqual([51.875, 61.875]);
    expect(order.opening.target).toBe(120);
  });

  it('[O4] a leaf that rolls is as much longer as its tail', () => {
    const site = wayYard(cantilever);
    const [width] = widths(orderOf(site, 'gate:1', target(site)));
    const [leaf] = Object.values(onlyGate(site).leaves);
    expect(width).toBeLessThanOrEqual(leaf?.widths.top ?? 0);
    expect(width).toBeGreaterThan((leaf?.widths.top ?? 0) - 0.125);
  });

  it('[O4] a gap, an unknown gate and an opening without room are refused in one line', () => {
    const refused = (run: () => unknown, what: RegExp) => {
      expect(run).toThrow(RangeError);
      expect(run).toThrow(what);
    };
    refused(() => orderOf(wayYard(gap), 'gate:1', inches(60)), /found a gap$/);
    refused(
      () => orderOf(double(50, 60), 'gate:9', inches(60)),
      /gate:9: expected one of this site/,
    );
    refused(
      () => orderOf(double(50, 60), 'gate:1', inches(6)),
      /^Opening of 6": expected room for a leaf; all else takes up 6 1\/4"$/,
    );
    refused(
      () => orderOf(double(50, 60), 'gate:1', inches(16), 'as apart as now'),
      /expected room for two leaves as far apart as now; all else/,
    );
  });

  it('[O4] turned round and back, no leaf is wider than it was', () => {
    const sixtyfourth = (low: number, high: number) =>
      fc.integer({ min: low * 64, max: high * 64 }).map((n) => n / 64);
    const step = fc.constantFrom(1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 10 / 254);
    fc.assert(
      fc.property(
        fc.array(sixtyfourth(20, 90), { minLength: 1, maxLength: 2 }),
        step,
        (leaves, leafStep) => {
          const site = setShop(double(...leaves), { leafStep: inches(leafStep) });
          const back = orderOf(site, 'gate:1', target(site), 'as apart as now');
          widths(back).forEach((width, n) => {
            expect(width).toBeLessThanOrEqual((leaves[n] ?? 0) + 1e-6);
            expect(width).toBeGreaterThan((leaves[n] ?? 0) - leafStep - 1e-6);
          });
          expect(back.opening.target).toBeLessThanOrEqual(target(site) + 1e-6);
          // alike, they take no more than both did
          const even = orderOf(site, 'gate:1', target(site));
          expect(even.opening.target).toBeLessThanOrEqual(target(site) + 1e-6);
          expect(new Set(widths(even)).size).toBe(1);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('[O4] ordered again for the opening that they make, the leaves stay', () => {
    const share = fc.constantFrom('equal' as const, 'as apart as now' as const);
    const leaf = fc.integer({ min: 20 * 16, max: 90 * 16 }).map((n) => n / 16);
    fc.assert(
      fc.property(
        leaf,
        leaf,
        share,
        fc.double({ min: 100, max: 300, noNaN: true }),
        (a, b, as, want) => {
          const site = double(a, b);
          const order = orderOf(site, 'gate:1', inches(want), as);
          expect(order.opening.target).toBeLessThanOrEqual(want + 1e-6);
          const made = orderLeaves(site, 'gate:1', order.leaves);
          expect(target(made)).toBe(order.opening.target);
          const again = orderOf(made, 'gate:1', order.opening.target, as);
          widths(again).forEach((width, n) => {
            expect(width).toBeLessThanOrEqual((widths(order)[n] ?? 0) + 1e-6);
          });
          // leaves alike take up their opening to the last step; both rounded down may leave one
          if (as === 'equal') expect(widths(again)).toEqual(widths(order));
        },
      ),
      { numRuns: 200 },
    );
  });

  it('[O4] a site in millimetres orders the leaves that the same site in inches does', () => {
    const mm = (n: number) => inches((n * 10) / 254);
    const size = fc.integer({ min: 800, max: 2400 });
    fc.assert(
      fc.property(size, size, fc.integer({ min: 3000, max: 6000 }), (a, b, want) => {
        const metric = setShop(setLengths(double(mm(a), mm(b)), { system: 'mm', fraction: 8 }), {
          leafStep: mm(5),
        });
        const imperial = setLengths(metric, { system: 'feet', fraction: 8 });
        const order = orderOf(metric, 'gate:1', mm(want));
        expect(order).toEqual(orderOf(imperial, 'gate:1', mm(want)));
        // worked out in whole tenths of a millimetre: 1 7/8 and 2 1/2 in are 47.625 and 63.5 mm
        const left = want * 1000 - 2 * 47_625 - 63_500;
        const each = Math.floor(left / 2 / 5000) * 5;
        for (const width of widths(order)) expect(width * 25.4).toBeCloseTo(each, 6);
      }),
    );
  });
});
