import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cheapest } from '../../../src/drawing/lettering/cheapest.ts';

describe('cheapest', () => {
  it('finds the least of cost and place in the list, the first of equals', () => {
    const cost = fc.option(fc.integer({ min: 0, max: 20 }));
    fc.assert(
      fc.property(fc.array(cost), (costs) => {
        const sums = costs.map((own, n) => (own === null ? Infinity : own + n));
        const least = Math.min(...sums);
        const found = cheapest(costs.keys(), (n) => costs[n] ?? null);
        expect(found).toBe(least === Infinity ? null : sums.indexOf(least));
      }),
    );
  });

  it('asks for no place that cannot be better', () => {
    const asked: number[] = [];
    const found = cheapest([0, 1, 2, 3, 4], (n) => {
      asked.push(n);
      return n === 0 ? 2.5 : 9;
    });
    expect(found).toBe(0);
    expect(asked).toEqual([0, 1, 2]);
  });

  it('finds the same where what is lost is told by no more than that', () => {
    const cost = fc.option(fc.integer({ min: 0, max: 20 }));
    fc.assert(
      fc.property(fc.array(cost), (costs) => {
        const at = (n: number) => costs[n] ?? null;
        const lost = (n: number, limit: number) => {
          const wrong = at(n);
          return wrong !== null && wrong > limit ? limit + 1 : wrong;
        };
        expect(cheapest(costs.keys(), lost)).toBe(cheapest(costs.keys(), at));
      }),
    );
  });
});
