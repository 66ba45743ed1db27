import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { equalBays } from '../../../src/engine/posts/equalBays.ts';
import { spaceOut, type Closed } from '../../../src/engine/posts/spaceOut.ts';
import { inches } from '../../../src/units/inches.ts';
import { modelledBay, modelledSquares, openGround, type Stretch } from './spacingModel.ts';

const spaced = ({ length, max, closed }: Stretch) => spaceOut(inches(length), inches(max), closed);

const baysOf = (stations: readonly number[], length: number): number[] => {
  const all = [0, ...stations, length];
  return all.slice(1).map((at, n) => at - (all[n] ?? 0));
};

const squares = (bays: readonly number[]): number => bays.reduce((sum, bay) => sum + bay * bay, 0);

/** Closed ground in order and apart, on a grid of quarters of an inch, up to so many pieces. */
const anyStretch = (most: number, longest: number) =>
  fc
    .record({
      length: fc.integer({ min: 40, max: longest }),
      max: fc.integer({ min: 72, max: 144 }),
      cuts: fc.uniqueArray(fc.integer({ min: 1, max: longest * 4 - 1 }), {
        minLength: 2,
        maxLength: 2 * most,
      }),
    })
    .map(({ length, max, cuts }): Stretch => {
      const ends = cuts
        .map((cut) => cut / 4)
        .filter((cut) => cut < length)
        .toSorted((a, b) => a - b);
      const closed = Array.from({ length: Math.floor(ends.length / 2) }, (_, n) => ({
        from: ends[2 * n] ?? 0,
        to: ends[2 * n + 1] ?? 0,
      }));
      return { length, max, closed };
    });

const standsOpen = (at: number, closed: readonly Closed[]): boolean =>
  closed.every(({ from, to }) => at <= from + 1e-6 || at >= to - 1e-6);

describe('line posts on ground of which some is closed', () => {
  it('[P1] bays are equal where nothing is in the way: 54 ft at 10 ft gives 6 bays of 108 in', () => {
    // installation sheet, Scribd 154728461: 648 in / 6 = 108 in
    expect(baysOf(spaceOut(inches(648), inches(120), []).stations, 648)).toEqual(
      Array(6).fill(108),
    );
    // closed ground that equal bays happen to clear changes nothing
    expect(spaceOut(inches(648), inches(120), [{ from: 110, to: 200 }]).stations).toEqual(
      spaceOut(inches(648), inches(120), []).stations,
    );
  });

  it('[P16] posts step aside for a line across the fence, and the others make up for it', () => {
    const { stations, tooLong } = spaceOut(inches(360), inches(120), [{ from: 85, to: 125 }]);
    expect(tooLong).toEqual([]);
    // two posts cannot do: from 85 two bays more would be 137 1/2 in each
    expect(stations).toEqual([85, 85 + 275 / 3, 85 + 550 / 3].map((at) => expect.closeTo(at, 9)));
  });

  it('[P17] as few posts and as small a largest bay as a mixed-integer model finds', () => {
    let seen = 0;
    fc.assert(
      fc.property(anyStretch(4, 900), (stretch) => {
        const { stations, tooLong } = spaced(stretch);
        const { length, max, closed } = stretch;
        const bays = baysOf(stations, length);
        seen += 1;
        expect(stations.every((at) => standsOpen(at, closed))).toBe(true);
        if (tooLong.length > 0) {
          // no way at all: with any number of posts some ground is too long to cross
          expect(closed.some(({ from, to }) => to - from > max)).toBe(true);
          return;
        }
        if (stations.length > 0) expect(modelledBay(stretch, stations.length - 1)).toBeNull();
        expect(Math.max(...bays)).toBeCloseTo(modelledBay(stretch, stations.length) ?? NaN, 4);
      }),
      { numRuns: 2000 },
    );
    expect(seen).toBeGreaterThanOrEqual(2000);
  }, 240_000);

  it('[P17] as even as the best of every choice of ground, by a quadratic model', () => {
    fc.assert(
      fc.property(anyStretch(3, 420), (stretch) => {
        const { stations, tooLong } = spaced(stretch);
        fc.pre(tooLong.length === 0 && stations.length > 0 && stations.length <= 3);
        const bays = baysOf(stations, stretch.length);
        const largest = Math.max(...bays) * (1 + 1e-9);
        const choices = stations.reduce<Closed[][]>(
          (so) => so.flatMap((row) => openGround(stretch).map((piece) => [...row, piece])),
          [[]],
        );
        const found = choices.flatMap(
          (pieces) => modelledSquares(stretch, pieces, largest + 1e-7) ?? [],
        );
        expect(found.length).toBeGreaterThan(0);
        const least = Math.min(...found);
        expect(squares(bays)).toBeLessThanOrEqual(least * (1 + 1e-6));
        expect(squares(bays)).toBeGreaterThanOrEqual(least * (1 - 1e-4));
      }),
      { numRuns: 60 },
    );
  }, 240_000);

  it('[P17] read from the other end the bays are as many, as large and as even', () => {
    fc.assert(
      fc.property(anyStretch(5, 2400), (stretch) => {
        const { length, closed } = stretch;
        const turned = closed.map(({ from, to }) => ({ from: length - to, to: length - from }));
        const [one, other] = [stretch, { ...stretch, closed: turned.toReversed() }].map((each) =>
          baysOf(spaced(each).stations, length),
        );
        expect(other).toHaveLength(one?.length ?? -1);
        expect(Math.max(...(other ?? []))).toBeCloseTo(Math.max(...(one ?? [])), 6);
        expect(squares(other ?? [])).toBeCloseTo(squares(one ?? []), 3);
      }),
    );
  });

  it('[P18] ground that no bay can cross is told with what is missing, and both sides are laid out', () => {
    const { stations, tooLong } = spaceOut(inches(600), inches(120), [{ from: 200, to: 350 }]);
    expect(tooLong).toEqual([{ from: 200, to: 350, missing: 30 }]);
    expect(stations).toEqual(
      [100, 200, 350, 350 + 250 / 3, 350 + 500 / 3].map((at) => expect.closeTo(at, 9)),
    );
  });

  it('[P18] closed ground at the very ends leaves the end posts where they are', () => {
    const all = spaceOut(inches(300), inches(120), [{ from: -5, to: 400 }]);
    expect(all).toEqual({ stations: [], tooLong: [{ from: 0, to: 300, missing: 180 }] });
    expect(spaceOut(inches(90), inches(120), [{ from: -5, to: 400 }]).tooLong).toEqual([]);
  });

  it('[P1] a stretch in one bay, of no length or with an endless maximum has no post', () => {
    expect(spaceOut(inches(0), inches(120), []).stations).toEqual([]);
    expect(spaceOut(inches(500), inches(Infinity), [{ from: 10, to: 20 }]).stations).toEqual([]);
    expect(() => spaceOut(inches(10), inches(0), [])).toThrow(RangeError);
    expect(equalBays(inches(500), inches(Infinity)).count).toBe(1);
  });
});
