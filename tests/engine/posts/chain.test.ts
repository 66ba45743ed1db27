import { describe, expect, it } from 'vitest';
import { chainOf, isLoop, type Chain } from '../../../src/engine/posts/chain.ts';
import { spotsOf } from '../../../src/engine/posts/spotsOf.ts';
import type { Site } from '../../../src/site/site.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { bare, fence, firstGate, gateOn } from '../plainYard.ts';

const chainIn = (site: Site): Chain => {
  const line = site.lines['line:1'];
  if (line === undefined) throw new Error('no line');
  return chainOf('line:1', line, site, spotsOf(site));
};

describe('chainOf', () => {
  it('measures every leg from the start of the line', () => {
    const { legs, length } = chainIn(
      fence(bare, [
        [0, 0],
        [300, 0],
        [300, 400],
      ]),
    );
    expect(legs.map((leg) => [leg.from, leg.length])).toEqual([
      [0, 300],
      [300, 400],
    ]);
    expect(length).toBe(700);
  });

  it('a closed line has a leg back to its first mark', () => {
    const chain = chainIn(
      fence(
        bare,
        [
          [0, 0],
          [300, 0],
          [300, 400],
        ],
        'closed',
      ),
    );
    expect(isLoop(chain)).toBe(true);
    expect(chain.length).toBe(1200);
  });

  it('[F5] the leg after two marks on one spot is still there, under its own vertex', () => {
    const drawn = fence(bare, [
      [0, 0],
      [240, 0],
      [240, 0.005],
      [240, 480],
    ]);
    // the third leg of the line, from the second of the two marks on
    const site = gateOn(drawn, 2, { from: 'middle', offset: 0 });
    const chain = chainIn(site);
    expect(chain.legs.map(({ length }) => Math.round(length))).toEqual([240, 480]);
    expect(chain.doubled.length).toBe(1);
    const gate = layOutSite(site).gates[firstGate(site)];
    expect(gate?.placed).toBe(true);
    expect(gate?.middle.y).toBeCloseTo(240, 1);
  });

  it('[F5] a gate on a leg between two marks on one spot has no leg to stand in', () => {
    const drawn = fence(bare, [
      [0, 0],
      [240, 0],
      [240, 0.005],
      [240, 480],
    ]);
    const site = gateOn(drawn, 1, { from: 'start', offset: 0 });
    const { gates, flags } = layOutSite(site);
    expect(gates[firstGate(site)]?.placed).toBe(false);
    expect(flags.map(({ rule }) => rule)).toEqual(['gate without a leg', 'two marks on one spot']);
  });

  it('marks of a loop on one spot across its end leave one of them', () => {
    const chain = chainIn(
      fence(
        bare,
        [
          [0, 0],
          [300, 0],
          [300, 400],
          [0, 0.001],
        ],
        'closed',
      ),
    );
    expect(chain.stops.length).toBe(3);
    expect(chain.length).toBeCloseTo(1200, 2);
    expect(isLoop(chain)).toBe(true);
  });

  it('all marks on one spot are no fence', () => {
    const chain = chainIn(
      fence(
        bare,
        [
          [5, 5],
          [5, 5],
          [5, 5.001],
        ],
        'closed',
      ),
    );
    expect([chain.legs, chain.length]).toEqual([[], 0]);
  });
});
