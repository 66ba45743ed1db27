import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { detailPens } from '../../../src/drawing/detail/detailPens.ts';
import { gateElevation } from '../../../src/drawing/detail/gateElevation.ts';
import type { GateSight } from '../../../src/drawing/detail/gateSight.ts';
import type { Bounds } from '../../../src/geometry/bounds.ts';
import { bottomOf } from '../../../src/engine/sweep/leafRooms.ts';
import type { Site } from '../../../src/site/site.ts';
import { centreStop, gap, swing, wayYard } from '../../engine/wayYard.ts';
import { sampleYards } from '../sampleYards.ts';
import { anyGate, sightsOf } from './anyGate.ts';
import { boxesBy, heightOf, widthOf } from './boxesBy.ts';

const near = 0.01;
const ratio = 48;

const alike = (found: readonly number[], wanted: readonly number[]): void => {
  const [a, b] = [found, wanted].map((list) => list.toSorted((one, other) => one - other));
  expect(a?.length).toBe(b?.length);
  a?.forEach((value, n) => expect(Math.abs(value - (b?.[n] ?? NaN))).toBeLessThan(near));
};

/** The outer of every two outlines of a frame: each frame is drawn by both. */
const outer = (boxes: readonly Bounds[]): Bounds[] => boxes.filter((_, n) => n % 2 === 0);

const measure = (sight: GateSight, site: Site): void => {
  const { atoms } = gateElevation(sight, site, ratio);
  const posts = boxesBy(atoms, detailPens.post, ratio);
  const standing = [...sight.pair, ...sight.stands].filter(({ post }) => post.kind !== 'hold-open');
  alike(
    posts.map(widthOf),
    standing.map(({ post }) => post.od),
  );
  alike(
    posts.map(heightOf),
    standing.map(({ post }) => post.length),
  );
  const holes = boxesBy(atoms, detailPens.hole, ratio);
  alike(
    holes.map(widthOf),
    standing.map(({ post }) => post.hole.diameter),
  );
  alike(
    holes.map(heightOf),
    standing.map(({ post }) => post.hole.depth),
  );
  // from inside face to inside face of the posts of the opening
  const [start, end] = sight.pair.map(({ post, at }) =>
    posts.find(({ minX, maxX }) => Math.abs((minX + maxX) / 2 - at.x) < post.od / 4),
  );
  alike([(end?.minX ?? NaN) - (start?.maxX ?? NaN)], [sight.laid.stands]);
  const frames = outer(boxesBy(atoms, detailPens.frame, ratio));
  const { leaves, slides } = sight.laid;
  alike(
    frames.map(widthOf),
    [...leaves, ...slides].map(({ width }) => width),
  );
  for (const frame of frames) {
    expect(Math.abs(-frame.maxY - bottomOf(sight.gate))).toBeLessThan(near);
  }
};

describe('gateElevation', () => {
  it.each(sampleYards)('[D123] of $name has the sizes of its layout', ({ site, layout }) => {
    for (const sight of sightsOf(site, layout)) measure(sight, site);
  });

  it('[D123] of any gate has the sizes of its layout', () => {
    let seen = 0;
    fc.assert(
      fc.property(anyGate, (site) => {
        for (const sight of sightsOf(site)) {
          seen += 1;
          measure(sight, site);
        }
      }),
    );
    expect(seen).toBeGreaterThan(50);
  });

  it('[D126] a pair of leaves has its rod and receiver, a stop its post, a gap neither leaf nor latch', () => {
    const count = (site: Site, pen: Parameters<typeof boxesBy>[1]): number =>
      sightsOf(site).flatMap((sight) =>
        boxesBy(gateElevation(sight, site, ratio).atoms, pen, ratio),
      ).length;
    const pair = wayYard(swing, 2);
    expect(count(pair, detailPens.rod)).toBe(1);
    expect(count(pair, detailPens.hinge)).toBe(8);
    expect(count(wayYard(swing, 1), detailPens.rod)).toBe(0);
    expect(count(wayYard(centreStop, 2), detailPens.post)).toBe(3);
    const open = wayYard(gap);
    expect(count(open, detailPens.post)).toBe(2);
    for (const pen of [detailPens.frame, detailPens.latch, detailPens.hinge, detailPens.rod]) {
      expect(count(open, pen)).toBe(0);
    }
  });

  it('[D123] over sloping ground each post stands as deep and as high as it is from its own ground', () => {
    const yard = sampleYards.find(({ name }) => name === 'hillside');
    if (yard === undefined) throw new Error('expected the hillside');
    const [sight] = sightsOf(yard.site, yard.layout);
    if (sight === undefined) throw new Error('expected a gate');
    const [start, end] = sight.pair;
    expect(Math.abs(start.base - end.base)).toBeGreaterThan(1);
    const { atoms } = gateElevation(sight, yard.site, ratio);
    const feet = boxesBy(atoms, detailPens.hole, ratio).map(({ minY }) => -minY);
    alike(feet, [start.base, end.base]);
    expect(
      boxesBy(atoms, detailPens.ground, ratio)
        .map(heightOf)
        .some((rise) => rise > 1),
    ).toBe(true);
  });
});
