import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closedOn } from '../../../src/engine/keepOut/closedOn.ts';
import { keepOutsOf } from '../../../src/engine/keepOut/keepOutsOf.ts';
import { reachInto } from '../../../src/engine/keepOut/reachInto.ts';
import { shiftClear } from '../../../src/engine/keepOut/shiftClear.ts';
import { distance } from '../../../src/geometry/distance.ts';
import type { SitePoint } from '../../../src/geometry/point.ts';
import { lerp } from '../../../src/geometry/lerp.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare } from '../plainYard.ts';

const place = fc.record({
  x: fc.integer({ min: -300, max: 300 }),
  y: fc.integer({ min: -300, max: 300 }),
});

const gas = (places: readonly { x: number; y: number }[], tolerance = 18) =>
  addFeature(
    bare,
    {
      kind: 'utility',
      run: 'buried',
      label: 'Gas line',
      service: 'gas',
      width: inches(2),
      tolerance: inches(tolerance),
    },
    places,
  );

const yard = fc
  .record({
    line: fc.uniqueArray(place, {
      minLength: 2,
      maxLength: 4,
      selector: ({ x, y }) => `${x} ${y}`,
    }),
    ring: fc.uniqueArray(place, {
      minLength: 3,
      maxLength: 5,
      selector: ({ x, y }) => `${x} ${y}`,
    }),
    tree: place,
    roots: fc.integer({ min: 0, max: 90 }),
  })
  .map(({ line, ring, tree, roots }) => {
    const piped = gas(line);
    const dug = addFeature(piped, { kind: 'keep-out', label: 'Old footing' }, ring);
    return addFeature(dug, { kind: 'tree', label: 'Oak', trunk: inches(6), roots: inches(roots) }, [
      tree,
    ]);
  });

describe('ground in which no hole may lie', () => {
  it('[Q1] where a leg is closed a hole reaches in, and elsewhere it does not', () => {
    fc.assert(
      fc.property(
        yard,
        fc.record({ start: place, end: place, bow: fc.constant(0) }),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        fc.integer({ min: 3, max: 12 }),
        (site, leg, share, radius) => {
          const length = distance(leg.start, leg.end);
          fc.pre(length > 1);
          const at: SitePoint = lerp(leg.start, leg.end, share);
          const keepOuts = keepOutsOf(site);
          expect(keepOuts).toHaveLength(3);
          for (const keepOut of keepOuts) {
            const by = reachInto(keepOut, at, radius);
            if (Math.abs(by) < 1e-5) continue;
            const closed = closedOn(keepOut, leg, radius);
            const within = closed.some(
              ({ from, to }) => share * length > from && share * length < to,
            );
            expect(within).toBe(by > 0);
          }
        },
      ),
      { numRuns: 1500 },
    );
  });

  it('[Q2] a service is closed for half its width and its tolerance on each side', () => {
    // CGA Best Practice 5.19: facility width and 18 in on each side; the hole keeps out besides
    const [pipe] = keepOutsOf(
      gas([
        { x: 100, y: -200 },
        { x: 100, y: 200 },
      ]),
    );
    if (pipe === undefined) throw new Error('expected a keep-out');
    const leg = { start: { x: 0, y: 0 }, end: { x: 300, y: 0 }, bow: 0 };
    expect(closedOn(pipe, leg, 4)).toEqual([{ from: 77, to: 123 }]);
    expect(reachInto(pipe, { x: 123, y: 0 }, 4)).toBe(0);
    expect(reachInto(pipe, { x: 120, y: 0 }, 4)).toBe(3);
  });

  it('[Q3] an edge of paving is stepped aside for where the fence passes it, not where it follows it', () => {
    const site = addFeature(bare, { kind: 'paving', label: 'Drive' }, [
      { x: 100, y: -200 },
      { x: 220, y: -200 },
      { x: 220, y: 5 },
      { x: 100, y: 5 },
    ]);
    const [drive] = keepOutsOf(site);
    if (drive === undefined) throw new Error('expected a keep-out');
    const leg = { start: { x: 0, y: 0 }, end: { x: 300, y: 0 }, bow: 0 };
    const closed = closedOn(drive, leg, 5).toSorted((a, b) => a.from - b.from);
    expect(closed).toEqual([
      { from: 95, to: 105 },
      { from: 215, to: 225 },
    ]);
  });

  it('[Q4] the least move that clears every hole, or none', () => {
    const closed = [{ from: 90, to: 120 }];
    expect(shiftClear([{ at: 100, closed }], 300)).toBe(-10);
    expect(
      shiftClear(
        [
          { at: 100, closed },
          { at: 60, closed },
        ],
        300,
      ),
    ).toBe(-10);
    // to the left the first hole would leave the leg
    expect(
      shiftClear(
        [
          { at: 5, closed },
          { at: 100, closed },
        ],
        300,
      ),
    ).toBe(20);
    expect(shiftClear([{ at: 50, closed: [{ from: -10, to: 400 }] }], 300)).toBeNull();
    expect(shiftClear([{ at: 50, closed }], 300)).toBe(0);
  });
});
