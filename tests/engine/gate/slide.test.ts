import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { GateLayout } from '../../../src/engine/layout.ts';
import type { GateWay } from '../../../src/site/gateWay.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, firstGate } from '../plainYard.ts';
import { cantilever, gap, wayYard } from '../wayYard.ts';

const laid = (site: Site): GateLayout => {
  const gate = layOutSite(site).gates[firstGate(site)];
  if (gate === undefined) throw new Error('no gate');
  return gate;
};

const xs = ({ slides }: GateLayout) =>
  slides.map(({ closed, stored }) => [closed.start.x, closed.end.x, stored.start.x, stored.end.x]);

describe('slideLayouts', () => {
  // 20 ft opening = 20 ft from the inside of the latch post to the inside of the first roller post:
  // common practice, no published source
  const twenty = wayYard({ ...cantilever, counterbalance: inches(120) }, 1);
  const long: Site = {
    ...twenty,
    gates: Object.fromEntries(
      Object.entries(twenty.gates).map(([id, gate]) => [
        id,
        {
          ...gate,
          leaves: Object.fromEntries(
            Object.entries(gate.leaves).map(([leaf, of]) => [
              leaf,
              // 240 less the latch of 2 1/8, 6 over and 120 behind
              { ...of, widths: { ...of.widths, top: inches(240 - 2.125 + 6 + 120) } },
            ]),
          ),
        },
      ]),
    ),
  };

  it('[W2] leaf = opening less the latch, and overlap and counterbalance', () => {
    expect(laid(long).opening.target).toBe(240);
  });

  it('[W2] closed it reaches past the first roller post, rolled aside it is clear of the opening', () => {
    const gate = laid(long);
    const face = gate.middle.x - 120;
    expect(xs(gate)).toEqual([[face - 126, face + 240 - 2.125, face - (240 - 2.125 + 126), face]]);
    expect(gate.slides[0]?.closed.start.y).toBeGreaterThan(0);
  });

  it('[W2] it rolls to the end that its gate says, and to the side', () => {
    const site = wayYard({ ...cantilever, stores: 'end' }, 1, { opens: 'right' });
    const gate = laid(site);
    const face = gate.middle.x + 24;
    expect(xs(gate)).toEqual([[face + 66, face - 48 + 2.125, face + 66 + 45.875, face]]);
    expect(gate.slides[0]?.closed.start.y).toBeLessThan(0);
  });

  it('[W2] two leaves meet with the latch between them and roll apart', () => {
    const gate = laid(wayYard(cantilever, 2));
    const [first, second] = gate.slides;
    const latch = bare.hardware['hardware:rod']?.takes.planned ?? NaN;
    expect((second?.closed.end.x ?? 0) - (first?.closed.end.x ?? 0)).toBeCloseTo(latch, 9);
    expect(first?.stored.end.x).toBeCloseTo(gate.middle.x - gate.opening.target / 2, 9);
    expect(second?.stored.end.x).toBeCloseTo(gate.middle.x + gate.opening.target / 2, 9);
  });

  it('[W2] the opening may be wider while the overlap lasts and the tail is on both rollers, and as much narrower', () => {
    const held = (way: GateWay) => laid(wayYard(way)).opening;
    const latch = bare.hardware['hardware:fork']?.takes;
    if (latch === undefined) throw new Error('no latch');
    const most = latch.high - latch.planned;
    const roomy = held(cantilever);
    expect(roomy.holdsTo - roomy.target).toBeCloseTo(6 + most, 9);
    // a tail of 66 on rollers 63 apart can spare 3
    const tight = held({ ...cantilever, rollers: inches(63) });
    expect(tight.holdsTo - tight.target).toBeCloseTo(3 + most, 9);
    expect(roomy.target - roomy.holdsFrom).toBeCloseTo(6 + latch.planned - latch.low, 9);
  });

  it('[W2] a leaf that is all tail closes nothing: it is not placed, and said so once', () => {
    const site = wayYard(cantilever);
    const [id] = Object.keys(site.gates) as [`gate:${string}`];
    const gate = site.gates[id];
    if (gate === undefined) throw new Error('no gate');
    const allTail = { ...cantilever, counterbalance: inches(300) };
    const layout = layOutSite({ ...site, gates: { [id]: { ...gate, way: allTail } } });
    expect(layout.gates[id]?.placed).toBe(false);
    const own = layout.flags.filter(
      ({ place, level }) => 'id' in place && place.id === id && level === 'stop',
    );
    expect(own.map(({ rule }) => rule)).toEqual(['leaf closes nothing']);
  });

  it('[W4] a gap is as wide as it says, between two posts and nothing else', () => {
    const site = wayYard(gap);
    const layout = layOutSite(site);
    const gate = laid(site);
    expect(gate).toMatchObject({
      placed: true,
      leaves: [],
      slides: [],
      stop: null,
      receiver: null,
    });
    const posts = [...layout.posts.values()].filter(({ gates }) => gates.length > 0);
    expect(posts.map(({ kind, od }) => [kind, od])).toEqual([
      ['gate', 2.875],
      ['gate', 2.875],
    ]);
    const [a, b] = posts.map(({ at }) => at.x).toSorted((one, other) => one - other);
    expect((b ?? 0) - (a ?? 0) - 2.875).toBeCloseTo(60, 9);
  });
});
