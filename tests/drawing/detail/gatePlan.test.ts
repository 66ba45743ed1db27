import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Atom } from '../../../src/drawing/atom.ts';
import { detailPens } from '../../../src/drawing/detail/detailPens.ts';
import { gateElevation } from '../../../src/drawing/detail/gateElevation.ts';
import { gatePlan } from '../../../src/drawing/detail/gatePlan.ts';
import type { GateSight } from '../../../src/drawing/detail/gateSight.ts';
import { clearPassage } from '../../../src/engine/gate/clearPassage.ts';
import { rotated } from '../../../src/geometry/rotated.ts';
import type { Bounds } from '../../../src/geometry/bounds.ts';
import type { MarkId } from '../../../src/site/ids.ts';
import type { Mark } from '../../../src/site/mark.ts';
import type { Site } from '../../../src/site/site.ts';
import { fromDegrees } from '../../../src/units/radians.ts';
import { swing, wayYard } from '../../engine/wayYard.ts';
import { sampleYards } from '../sampleYards.ts';
import { anyGate, sightsOf } from './anyGate.ts';
import { boxesBy, heightOf, widthOf } from './boxesBy.ts';

const near = 0.01;
const ratio = 48;

const drawnOf = (sight: GateSight, site: Site): readonly Atom[] =>
  gatePlan(sight, site, ratio, null).atoms;

const measure = (sight: GateSight, site: Site): void => {
  const atoms = drawnOf(sight, site);
  const { leaves, slides, stands } = sight.laid;
  const frames = boxesBy(atoms, detailPens.frame, ratio);
  [...slides, ...leaves].forEach(({ width, thickness }, n) => {
    const frame = frames[n];
    if (frame === undefined) throw new Error('expected a frame');
    expect(Math.abs(widthOf(frame) - width)).toBeLessThan(near);
    expect(Math.abs(heightOf(frame) - thickness)).toBeLessThan(near);
  });
  const posts = boxesBy(atoms, detailPens.post, ratio);
  [...sight.pair, ...sight.stands].forEach(({ post }, n) => {
    expect(
      Math.abs(widthOf(posts[n] ?? { minX: 0, maxX: 0, minY: 0, maxY: 0 }) - post.od),
    ).toBeLessThan(near);
  });
  // with its ticks the line of a dimension is longer by one of them at each end
  const [opening] = boxesBy(atoms, detailPens.opening, ratio);
  if (opening === undefined) throw new Error('expected the opening');
  expect(Math.abs(widthOf(opening) - 2 * 0.03 * ratio - stands)).toBeLessThan(near);
  if (leaves.length === 0 || sight.laid.stop !== null) return;
  const { clear } = clearPassage(sight.gate, sight.laid);
  if (clear <= 0 || Math.abs(stands - sight.laid.opening.target) > near) return;
  const [passage] = boxesBy(atoms, detailPens.size, ratio);
  if (passage === undefined) throw new Error('expected the passage');
  expect(Math.abs(widthOf(passage) - 2 * 0.03 * ratio - clear)).toBeLessThan(near);
};

/** A site turned about a place of it. */
const turnedBy = (site: Site, degrees: number): Site => {
  const angle = fromDegrees(degrees);
  const marks = Object.entries(site.marks).map(([id, mark]): [string, Mark] => [
    id,
    { ...mark, ...rotated({ x: mark.x, y: mark.y }, { x: 70, y: -300 }, angle) },
  ]);
  return { ...site, marks: Object.fromEntries(marks) as Record<MarkId, Mark> };
};

/** Every length of a drawing to a hundred thousandth of an inch. */
const rough = (box: Bounds): Bounds =>
  JSON.parse(
    JSON.stringify(box, (_, one: unknown) =>
      typeof one === 'number' ? Math.round(one * 1e5) / 1e5 + 0 : one,
    ),
  ) as Bounds;

/** All lengths of a drawing in their order, and what it is without them. */
const takenApart = (atoms: readonly Atom[]): { lengths: number[]; rest: string } => {
  const lengths: number[] = [];
  const rest = JSON.stringify(atoms, (_, one: unknown) => {
    if (typeof one !== 'number') return one;
    lengths.push(one);
    return 0;
  });
  return { lengths, rest };
};

const sameDrawing = (found: readonly Atom[], wanted: readonly Atom[]): void => {
  const [a, b] = [takenApart(found), takenApart(wanted)];
  expect(a.rest).toBe(b.rest);
  const off = a.lengths.map((length, n) => Math.abs(length - (b.lengths[n] ?? NaN)));
  expect(Math.max(...off)).toBeLessThan(1e-6);
};

const pensSeen = ['post', 'hole', 'frame', 'hinge', 'latch', 'opened', 'way'] as const;

/** What is drawn by each pen as the room it takes, in no order; seen in a mirror where asked. */
const roomsOf = (atoms: readonly Atom[], mirror: (box: Bounds) => Bounds): string[] =>
  pensSeen
    .flatMap((pen) =>
      boxesBy(atoms, detailPens[pen], ratio).map(
        (box) => `${pen} ${JSON.stringify(rough(mirror(box)))}`,
      ),
    )
    .toSorted();

describe('gatePlan', () => {
  it.each(sampleYards)('[D123] of $name has the sizes of its layout', ({ site, layout }) => {
    for (const sight of sightsOf(site, layout)) measure(sight, site);
  });

  it('[D123] of any gate has the sizes of its layout', () => {
    fc.assert(
      fc.property(anyGate, (site) => {
        for (const sight of sightsOf(site)) measure(sight, site);
      }),
    );
  });

  it('[D125] a yard that is turned has the same pictures', () => {
    fc.assert(
      fc.property(anyGate, fc.integer({ min: 1, max: 359 }), (site, degrees) => {
        const turned = turnedBy(site, degrees);
        const [one, other] = [sightsOf(site), sightsOf(turned)];
        expect(other.length).toBe(one.length);
        one.forEach((sight, n) => {
          const same = other[n];
          if (same === undefined) throw new Error('expected a gate');
          sameDrawing(drawnOf(same, turned), drawnOf(sight, site));
          const up = (of: GateSight, where: Site) => gateElevation(of, where, ratio).atoms;
          sameDrawing(up(same, turned), up(sight, site));
        });
      }),
      { numRuns: 40 },
    );
  });

  it.each([60, 90, 135, 180])(
    '[D125] hung on its other post a leaf that turns %i degrees is seen in a mirror',
    (degrees) => {
      const way = { ...swing, turns: fromDegrees(degrees) };
      const [one, other] = (['start', 'end'] as const).map((hingedAt) => {
        const site = wayYard(way, 1, { hingedAt });
        const [sight] = sightsOf(site);
        if (sight === undefined) throw new Error('expected a gate');
        const atoms = [...drawnOf(sight, site), ...gateElevation(sight, site, ratio).atoms];
        return { atoms, opening: sight.laid.stands };
      });
      if (one === undefined || other === undefined) throw new Error('expected both');
      const mirror = (box: Bounds): Bounds => ({
        ...box,
        minX: one.opening - box.maxX,
        maxX: one.opening - box.minX,
      });
      expect(roomsOf(other.atoms, (box) => box)).toEqual(roomsOf(one.atoms, mirror));
      expect(roomsOf(other.atoms, (box) => box)).not.toEqual(roomsOf(one.atoms, (box) => box));
    },
  );
});
