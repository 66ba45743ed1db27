import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hangingLoad, type Hanging } from '../../../src/engine/structure/hangingLoad.ts';
import { latchSag } from '../../../src/engine/structure/latchSag.ts';
import { fabricWeight, leafWeight, uprightsIn } from '../../../src/engine/structure/leafWeight.ts';
import { pipeSection } from '../../../src/engine/structure/pipeSection.ts';
import { schedule40 } from '../../../src/trade/schedule40.ts';
import { steelModulus } from '../../../src/trade/steel.ts';
import { inches } from '../../../src/units/inches.ts';
import { leanOf } from './numeric.ts';

const post = schedule40(2.875);
const leaf: Hanging = {
  pounds: 80,
  width: inches(72),
  hingeAllowance: inches(1.5),
  postOd: post.od,
  lowHinge: inches(10),
  highHinge: inches(64),
};

/** The moment in a post, fast at 0, by a pull at the upper hinge and a push back at the lower one. */
const momentIn =
  ({ lowHinge, highHinge }: Hanging, pull: number) =>
  (height: number): number =>
    pull * Math.max(0, highHinge - height) - pull * Math.max(0, lowHinge - height);

const anyLeaf = fc.record({
  pounds: fc.double({ min: 10, max: 600, noNaN: true }),
  width: fc.double({ min: 24, max: 288, noNaN: true }).map(inches),
  hingeAllowance: fc.double({ min: 0.5, max: 4, noNaN: true }).map(inches),
  postOd: fc.constant(post.od),
  lowHinge: fc.double({ min: 4, max: 20, noNaN: true }).map(inches),
  highHinge: fc.double({ min: 30, max: 130, noNaN: true }).map(inches),
});

describe('what a leaf does to its post', () => {
  it('[Z9] its hinges pull and push by the moment of its weight over their distance', () => {
    const { pull, moment } = hangingLoad(leaf);
    // statics: 80 lb at 1.4375 + 1.5 + 36 in from the middle of the post, hinges 54 in apart
    expect(moment).toBeCloseTo(80 * 38.9375, 9);
    expect(pull).toBeCloseTo((80 * 38.9375) / 54, 9);
    expect(() => hangingLoad({ ...leaf, highHinge: inches(10) })).toThrow(/over the low one/);
  });

  it('[Z10] the latch side comes down by the lean of the post, integrated over its moments, within 0.1 %', () => {
    fc.assert(
      fc.property(anyLeaf, (one) => {
        const { pull } = hangingLoad(one);
        const { inertia } = pipeSection(post);
        const at = (height: number): number =>
          leanOf(momentIn(one, pull), { height, modulus: steelModulus, inertia });
        const turn = (at(one.highHinge) - at(one.lowHinge)) / (one.highHinge - one.lowHinge);
        const sag = turn * (one.hingeAllowance + one.width);
        expect(Math.abs(latchSag(one, post.wall) / sag - 1)).toBeLessThan(1e-3);
      }),
    );
  });

  it('[Z10] no leaf comes down by more than it is wide, however thin its post', () => {
    const high: Hanging = {
      pounds: 1e9,
      width: inches(44),
      hingeAllowance: inches(1.875),
      postOd: inches(0.01),
      lowHinge: inches(10),
      highHinge: inches(633_600),
    };
    expect(latchSag(high, inches(0.005))).toBe(45.875);
    // so thin that its stiffness is no number any more
    const thin = { ...high, postOd: inches(1e-120) };
    expect(latchSag(thin, inches(1e-121))).toBe(45.875);
  });

  it('[Z4] a heavier or wider leaf never sags less, a thicker wall never more', () => {
    fc.assert(
      fc.property(anyLeaf, fc.double({ min: 1, max: 2, noNaN: true }), (one, by) => {
        const sag = latchSag(one, post.wall);
        expect(latchSag({ ...one, pounds: one.pounds * by }, post.wall)).toBeGreaterThanOrEqual(
          sag,
        );
        expect(
          latchSag({ ...one, width: inches(one.width * by) }, post.wall),
        ).toBeGreaterThanOrEqual(sag);
        expect(latchSag(one, inches(post.wall * by))).toBeLessThanOrEqual(sag + 1e-12);
      }),
    );
  });
});

describe('what a leaf weighs', () => {
  const frame = schedule40(1.66);
  const make = { frame, mesh: inches(2), wire: inches(0.148) };

  it('[Z11] its parts add up: frame by the foot of its pipe, fabric by its wire, rods and fittings', () => {
    const parts = leafWeight({ ...make, width: inches(48), height: inches(48) });
    const [pipe, fabric, fittings] = parts;
    // 16 ft of 2.27 lb pipe; F1083, from memory
    expect(pipe?.pounds).toBeCloseTo(16 * 2.27, 0);
    expect(fabric?.label).toBe('fabric');
    expect(fittings?.pounds).toBeCloseTo(0.1 * ((pipe?.pounds ?? 0) + (fabric?.pounds ?? 0)), 9);
  });

  it('[Z11] a square foot of fabric weighs its wire, counted along each wire of it', () => {
    const [mesh, wire] = [2, 0.148];
    // over 200 by 200 in: as many wires each way as pitches go into it
    const count = 2 * (200 / (mesh + wire));
    const pounds = count * 200 * (Math.PI / 4) * wire ** 2 * 0.2836;
    expect(fabricWeight(inches(mesh), inches(wire))).toBeCloseTo((pounds / 200 ** 2) * 144, 9);
  });

  it('[Z11] no panel between uprights is over 5 ft wide', () => {
    // ASTM F654-03 5.1.1
    expect([48, 60, 61, 120, 121].map((width) => uprightsIn(inches(width)))).toEqual([
      0, 0, 1, 1, 2,
    ]);
  });

  it('[Z4] a wider or higher leaf never weighs less', () => {
    const pounds = (width: number, height: number): number =>
      leafWeight({ ...make, width: inches(width), height: inches(height) }).reduce(
        (sum, one) => sum + one.pounds,
        0,
      );
    fc.assert(
      fc.property(
        fc.double({ min: 24, max: 280, noNaN: true }),
        fc.double({ min: 36, max: 140, noNaN: true }),
        fc.double({ min: 0, max: 40, noNaN: true }),
        (width, height, more) => {
          expect(pounds(width + more, height)).toBeGreaterThanOrEqual(pounds(width, height));
          expect(pounds(width, height + more)).toBeGreaterThanOrEqual(pounds(width, height));
        },
      ),
    );
  });
});
