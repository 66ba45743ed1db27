import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { GateLayout } from '../../../src/engine/layout.ts';
import type { Receiver } from '../../../src/site/receiver.ts';
import type { Site } from '../../../src/site/site.ts';
import { receiverFor } from '../../../src/trade/receivers.ts';
import { inches } from '../../../src/units/inches.ts';
import { firstGate } from '../plainYard.ts';
import { cantilever, centreStop, swing, wayYard } from '../wayYard.ts';

const { kind, ground, depth, inside, rod, lift } = receiverFor('firm soil');
const receiver: Receiver = { kind, ground, depth, inside, rod, lift };

const laid = (site: Site): GateLayout | undefined => layOutSite(site).gates[firstGate(site)];

describe('receiverOf', () => {
  it('[W5] it is in the middle of the gap between two closed leaves', () => {
    const gate = laid(wayYard(swing, 2, { receiver }));
    expect(gate?.receiver?.at.x).toBeCloseTo(gate?.middle.x ?? NaN, 9);
    expect(gate?.receiver?.at.y).toBeCloseTo(0, 9);
    expect(gate?.receiver?.hole).toMatchObject({ diameter: inside, depth });
  });

  it('[W5] with unequal leaves it is off the middle of the opening by half their difference', () => {
    const site = wayYard(swing, 2, { receiver });
    const [id] = Object.keys(site.gates) as [`gate:${string}`];
    const gate = site.gates[id];
    if (gate === undefined) throw new Error('no gate');
    const leaves = Object.fromEntries(
      Object.entries(gate.leaves).map(([leaf, of], n) => [
        leaf,
        { ...of, widths: { ...of.widths, top: inches(n === 0 ? 60 : 50) } },
      ]),
    );
    const layout = laid({ ...site, gates: { [id]: { ...gate, leaves } } });
    expect((layout?.receiver?.at.x ?? NaN) - (layout?.middle.x ?? NaN)).toBeCloseTo(5, 9);
  });

  it('[W5] a sleeve in concrete wants a hole as wide as its concrete', () => {
    const set = laid(wayYard(swing, 2, { receiver: { ...receiver, kind: 'set in concrete' } }));
    // 10 to 12 in across: from memory
    expect(set?.receiver?.hole.diameter).toBe(10);
  });

  it('[W5] a single leaf, a stop or leaves that roll have none', () => {
    expect(laid(wayYard(swing, 1, { receiver }))?.receiver).toBeNull();
    expect(laid(wayYard(centreStop, 2, { receiver }))?.receiver).toBeNull();
    expect(laid(wayYard(cantilever, 2, { receiver }))?.receiver).toBeNull();
    expect(laid(wayYard(swing, 2))?.receiver).toBeNull();
  });
});
