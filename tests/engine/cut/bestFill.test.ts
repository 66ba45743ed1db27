import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bestFill, type Fill } from '../../../src/engine/cut/bestFill.ts';
import { loadsOf, type Lot } from '../../../src/engine/cut/loadsOf.ts';

/** Few long pieces, or many short ones, so that loads stay few or fill all rooms. */
const anyFill = fc
  .constantFrom({ room: 400, long: 200, most: 3 }, { room: 60, long: 20, most: 9 })
  .chain(({ room, long, most }) => {
    const piece = fc.record({
      length: fc.integer({ min: 1, max: long }),
      worth: fc.integer({ min: -1, max: 40 }),
      most: fc.integer({ min: 0, max: most }),
    });
    return fc.record({
      room: fc.integer({ min: 0, max: room }),
      pieces: fc.uniqueArray(piece, { maxLength: 9, selector: ({ length }) => length }),
    });
  })
  .map(({ room, pieces }): Fill => ({
    room,
    lengths: pieces.map(({ length }) => length),
    worth: pieces.map(({ worth }) => worth),
    most: pieces.map(({ most }) => most),
  }));

/** The most that is worth, by looking at every piece by itself and at every room. */
const plainly = ({ lengths, worth, most, room }: Fill): number => {
  let best = Array.from({ length: room + 1 }, () => 0);
  lengths.forEach((length, n) => {
    for (let count = 0; count < most[n]!; count += 1) {
      best = best.map((was, used) =>
        used < length ? was : Math.max(was, best[used - length]! + worth[n]!),
      );
    }
  });
  return best[room]!;
};

const sum = (all: readonly number[]): number => all.reduce((so, one) => so + one, 0);

const lot = fc.record({
  size: fc.integer({ min: 1, max: 40 }),
  worth: fc.integer({ min: 1, max: 20 }),
});

describe('the best fill of a stick', () => {
  it('[L23] is worth as much as any, and fits', () => {
    fc.assert(
      fc.property(anyFill, (fill) => {
        const { worth, counts } = bestFill(fill);
        expect(worth).toBe(plainly(fill));
        expect(sum(counts.map((count, n) => count * fill.worth[n]!))).toBe(worth);
        expect(sum(counts.map((count, n) => count * fill.lengths[n]!))).toBeLessThanOrEqual(
          fill.room,
        );
        counts.forEach((count, n) => expect(count).toBeLessThanOrEqual(fill.most[n]!));
      }),
      { numRuns: 2000 },
    );
  });

  it('[L23] loads are the best of all that lots add up to, each of the lots that it is told to be of', () => {
    let all = 0;
    fc.assert(
      fc.property(
        fc.array(lot, { minLength: 1, maxLength: 9 }),
        fc.integer({ min: 1, max: 200 }),
        (some, room) => {
          const lots = some.map((one): Lot => ({ ...one, piece: 0, count: 1 }));
          const { loads, taken } = loadsOf(lots, room);
          if (taken === lots.length) all += 1;
          const early = lots.slice(0, taken);
          const later = sum(lots.slice(taken).map(({ size }) => size));
          const ways = Array.from({ length: 2 ** taken }, (_, bits) => {
            const own = early.filter((_one, n) => (bits & (1 << n)) !== 0);
            return {
              used: sum(own.map(({ size }) => size)),
              worth: sum(own.map(({ worth }) => worth)),
            };
          });
          const told = Array.from({ length: loads.end - loads.first }, (_, n) => loads.first + n);
          for (const n of told) {
            expect(ways[loads.lots[n]!]).toEqual({ used: loads.used[n], worth: loads.worth[n] });
          }
          for (let own = Math.max(0, room - later); own <= room; own += 1) {
            const within = ways.filter(({ used }) => used <= own).map(({ worth }) => worth);
            const n = told.findLast((one) => loads.used[one]! <= own);
            expect(loads.worth[n!]).toBe(Math.max(...within));
          }
        },
      ),
      { numRuns: 500 },
    );
    expect(all).toBeGreaterThan(50);
  });
});
