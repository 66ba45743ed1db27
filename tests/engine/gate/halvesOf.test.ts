import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { halvesOf } from '../../../src/engine/gate/halvesOf.ts';
import { openingOf } from '../../../src/engine/gate/openingOf.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { inches } from '../../../src/units/inches.ts';
import { firstGate } from '../plainYard.ts';
import { centreStop, swing, wayYard } from '../wayYard.ts';
import { term } from './term.ts';

const sizes = fc.tuple(
  fc.integer({ min: 64, max: 192 }),
  fc.integer({ min: 0, max: 64 }),
  fc.integer({ min: 0, max: 64 }),
);
const anyTerm = (role: 'hinge' | 'leaf' | 'latch') =>
  sizes.map(([low, a, b]) => term(role, low / 64, (low + a) / 64, (low + a + b) / 64));
const half = fc.tuple(anyTerm('hinge'), anyTerm('leaf'), anyTerm('latch'));

describe('halvesOf', () => {
  it('[W1] each half is from its post to the face of the stop', () => {
    const site = wayYard(centreStop);
    const gate = layOutSite(site).gates[firstGate(site)];
    const halves = gate === undefined ? null : halvesOf(gate.opening);
    // hinge 1 7/8, leaf 44, latch planned at 2 1/8
    expect(halves?.map(({ target }) => target)).toEqual([48, 48]);
    expect(halves?.map(({ holdsFrom, holdsTo }) => [holdsFrom, holdsTo])).toEqual([
      [47.875, 48.125],
      [47.875, 48.125],
    ]);
    expect(gate?.opening.target).toBe(48 + 4 + 48);
    expect(gate?.stop).toEqual(gate?.middle);
  });

  it('[W1] the halves and the stop add up to the opening, its ranges too', () => {
    fc.assert(
      fc.property(half, half, (one, other) => {
        const stop = term('stop', 4);
        const opening = openingOf([...one, stop, ...other.toReversed()]);
        const halves = halvesOf(opening);
        if (halves === null) throw new Error('no halves');
        for (const end of ['target', 'holdsFrom', 'holdsTo', 'mayFrom', 'mayTo'] as const) {
          const sum = halves[0][end] + 4 + halves[1][end];
          expect(sum).toBeCloseTo(opening[end], 9);
        }
      }),
    );
  });

  it('[W1] unequal leaves have unequal halves, and the stop stands between them', () => {
    const site = wayYard(centreStop, 2);
    const id = firstGate(site);
    const gate = site.gates[id];
    const [[leaf, of]] = Object.entries(gate?.leaves ?? {}) as [[`leaf:${string}`, never]];
    if (gate === undefined) throw new Error('no gate');
    const wide = { ...(of as object), widths: { top: inches(66.875), middle: null, bottom: null } };
    const changed = { ...gate, leaves: { ...gate.leaves, [leaf]: wide } } as typeof gate;
    const laid = layOutSite({ ...site, gates: { [id]: changed } }).gates[id];
    expect(laid?.stop?.x).toBeCloseTo((laid?.middle.x ?? NaN) + 5, 9);
  });

  it('[W1] an opening without a stop has no halves', () => {
    const site = wayYard(swing, 2);
    const gate = layOutSite(site).gates[firstGate(site)];
    expect(gate === undefined ? undefined : halvesOf(gate.opening)).toBeNull();
  });
});
