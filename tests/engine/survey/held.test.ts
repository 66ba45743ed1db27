import { describe, expect, it } from 'vitest';
import { newCarry } from '../../../src/engine/carry/carry.ts';
import { expectedError } from '../../../src/engine/survey/expectedError.ts';
import type { Held } from '../../../src/engine/survey/held.ts';
import { surveyed } from '../../../src/engine/survey/surveyed.ts';
import { heldOf, surveyOf } from '../../../src/engine/survey/surveyOf.ts';
import type { MarkId } from '../../../src/site/ids.ts';
import type { Site } from '../../../src/site/site.ts';
import { chanceOf } from './chance.ts';
import { plainHeld, type PlainHeld } from './plainHeld.ts';
import { plainStrength } from './plainStrength.ts';
import { randomNetwork } from './randomNetwork.ts';
import { tapedSite } from './tapedSite.ts';

const heldIn = (site: Site): Held => {
  const held = heldOf(site, newCarry());
  if (held === null) throw new Error('expected fewer marks');
  return held;
};

/** Random sites where they stand, but those that come to no rest or stand in a position that is nearly special. */
const stood = (count: number) => {
  const found: { seed: number; site: Site; held: Held; plain: PlainHeld }[] = [];
  let leftOut = 0;
  for (let seed = 0; found.length < count; seed += 1) {
    const { site } = surveyed(randomNetwork(seed).site, null);
    const plain = plainHeld(site);
    const near = plain.strength.singular.some((value) => value > 1e-9 && value < 1e-4);
    if (near || plain.marks.length < 2 || !surveyOf(site, newCarry()).settled) leftOut += 1;
    else found.push({ seed, site, held: heldIn(site), plain });
  }
  return { found, leftOut };
};

const { found, leftOut } = stood(200);

/** Where the unknowns of marks stand with the library. */
const unknownsOf = ({ plain: { free, drawn } }: PlainHeld) => {
  const numbers = new Map(free.map((id, n) => [id, 2 * n] as const));
  const size = drawn.length;
  return {
    size,
    columnOf: (id: MarkId): number | undefined => numbers.get(id),
    unit: (column: number): Float64Array => new Float64Array(size).fill(1, column, column + 1),
  };
};

/** How far some moves are from being one way and back, over the longest: 0 where they are. */
const rankOfMoves = (moves: readonly (readonly [number, number])[]): number => {
  const [long] = moves.toSorted((a, b) => Math.hypot(...b) - Math.hypot(...a));
  if (long === undefined) return 0;
  const [x, y] = long;
  return Math.max(...moves.map(([u, v]) => Math.abs(u * y - v * x))) / Math.hypot(x, y) ** 2;
};

/** A body of the most marks by trying every two. */
const largestOf = ({ marks, still, boardOf }: PlainHeld): number => {
  if (still.size > 1) return still.size;
  const sizes = marks.flatMap((a, n) =>
    marks.slice(n + 1).flatMap((b) => {
      const board = boardOf(a, b);
      return board === null || [...still].some((id) => !board.has(id)) ? [] : [board.size];
    }),
  );
  return Math.max(still.size, ...sizes);
};

describe('what readings hold', () => {
  it('[V13] the body is the largest that a library finds by trying every two marks', () => {
    expect(leftOut).toBeLessThan(40);
    for (const { seed, held, plain } of found) {
      const own = held.body?.marks ?? new Set<MarkId>();
      expect(own.size, `network ${seed}`).toBe(largestOf(plain));
      if (held.body?.fast === true)
        expect([...own].toSorted()).toEqual([...plain.still].toSorted());
      const base = held.body?.base ?? null;
      if (base !== null) {
        expect([...(plain.boardOf(...base) ?? [])].toSorted()).toEqual([...own].toSorted());
      }
    }
    const bodies = found.map(({ held }) => held.body);
    expect(bodies.filter((body) => body?.fast === true).length).toBeGreaterThan(20);
    expect(bodies.filter((body) => body?.base != null).length).toBeGreaterThan(100);
    expect(found.filter(({ plain }) => plain.still.size === 1).length).toBeGreaterThan(2);
  }, 120_000);

  it('[V13] a mark outside of it is loose the ways that it can move once the body is nailed down', () => {
    const seen = { one: 0, two: 0 };
    for (const { site, held, plain } of found) {
      // a bearing holds to north what turns beside a body that no bearing holds
      if (Object.values(site.observations).some(({ kind }) => kind === 'bearing')) continue;
      const { columnOf, size, unit } = unknownsOf(plain);
      const body = held.body?.marks ?? new Set<MarkId>();
      const nails = [...body].flatMap((id) => {
        const column = columnOf(id);
        return column === undefined ? [] : [unit(column), unit(column + 1)];
      });
      const { free } = plainStrength([...plain.rows, ...nails], size, 1e6);
      for (const { mark, ways } of held.loose) {
        const column = columnOf(mark);
        if (body.has(mark) || column === undefined) continue;
        const moves = free.map((motion) => [motion[column]!, motion[column + 1]!] as const);
        const long = Math.hypot(...moves.flat());
        expect(long).toBeGreaterThan(1e-9);
        const [way] = ways;
        // what every move has to the side of the one way that is told
        const aside = Math.hypot(...moves.map(([x, y]) => x * way!.y - y * way!.x)) / long;
        if (ways.length === 1) expect(aside).toBeLessThan(1e-5);
        else
          expect(ways).toEqual([
            { x: 1, y: 0 },
            { x: 0, y: 1 },
          ]);
        if (ways.length === 2 && held.body?.base !== null)
          expect(rankOfMoves(moves)).toBeGreaterThan(1e-9);
        seen[ways.length === 1 ? 'one' : 'two'] += 1;
      }
    }
    expect(seen.one).toBeGreaterThan(50);
    expect(seen.two).toBeGreaterThan(10);
  }, 120_000);

  it('[V13] a mark that is known to no better than a foot is loose, the way in which it is not known', () => {
    const marks = { a: [0, 0], b: [1200, 0], c: [600, 2] } as const;
    const site = tapedSite(marks, ['ab', 'ac', 'bc'], ['a', 'b']);
    const { loose, body } = heldIn(site);
    // nearly in line with both: 2 in aside of 600 in
    expect(body?.marks.size).toBe(3);
    expect(loose).toEqual([{ mark: 'mark:c', ways: [{ x: 0, y: 1 }] }]);
  });

  it('[V15] the error of a place is that of a library, told from the body as a whole', () => {
    const seen = { floating: 0, fast: 0 };
    for (const { seed, held, plain } of found) {
      const body = held.body;
      if (body === null || held.datum === null || body.marks.size < 3) continue;
      const { columnOf, size } = unknownsOf(plain);
      const by = [...held.datum.by].flatMap((id) => columnOf(id) ?? []);
      // the motions that nothing tells of, of the datum's marks alone, are nothing on the whole
      const whole = plain.strength.free.map((motion) => {
        const row = new Float64Array(size);
        for (const column of by) {
          row[column] = 1e5 * motion[column]!;
          row[column + 1] = 1e5 * motion[column + 1]!;
        }
        return row;
      });
      const { sigmaOf } = plainStrength([...plain.rows, ...whole], size, 1e6);
      const { pick, between } = chanceOf(seed);
      const [a, b] = [pick([...body.marks]), pick([...body.marks])];
      const q = between(0, 1);
      const p = 1 - q;
      const along = (x: number, y: number): Float64Array => {
        const row = new Float64Array(size);
        for (const [id, share] of [
          [a, p],
          [b, q],
        ] as const) {
          const column = columnOf(id);
          if (column === undefined) continue;
          row[column]! += share * x;
          row[column + 1]! += share * y;
        }
        return row;
      };
      const ours = expectedError(held, [
        { mark: a, share: p },
        { mark: b, share: q },
      ]);
      expect(ours).not.toBeNull();
      const way = { x: Math.cos(ours!.bearing), y: Math.sin(ours!.bearing) };
      const [major, minor] = [sigmaOf(along(way.x, way.y)), sigmaOf(along(-way.y, way.x))];
      expect(ours!.major / (1 + major!)).toBeCloseTo(major! / (1 + major!), 3);
      expect(ours!.minor / (1 + minor!)).toBeCloseTo(minor! / (1 + minor!), 3);
      expect(ours!.major).toBeGreaterThanOrEqual(ours!.minor);
      seen[body.fast ? 'fast' : 'floating'] += 1;
    }
    expect(seen.floating).toBeGreaterThan(60);
    expect(seen.fast).toBeGreaterThan(15);
  }, 120_000);

  it('[V15] two tapes that cross square make an ellipse of their own sigmas', () => {
    const marks = { a: [0, 0], b: [1200, 600], c: [0, 600] } as const;
    const held = heldIn(tapedSite(marks, ['ac', 'bc'], ['a', 'b']));
    const error = expectedError(held, [{ mark: 'mark:c', share: 1 }]);
    // 1/4 in and 1/2 in for each 100 ft: 1/2 in of 50 ft northward, 3/4 in of 100 ft eastward
    expect(error?.major).toBeCloseTo(0.75, 6);
    expect(error?.minor).toBeCloseTo(0.5, 6);
    expect(error?.bearing).toBeCloseTo(0, 6);
    // half way to a fixed mark it is half
    const half = expectedError(held, [
      { mark: 'mark:c', share: 0.5 },
      { mark: 'mark:a', share: 0.5 },
    ]);
    expect(half?.major).toBeCloseTo(0.375, 6);
    expect(expectedError(held, [{ mark: 'mark:none', share: 1 }])).toBeNull();
  });

  it('[V15] told from two marks these have no error along their tape but its own', () => {
    const marks = { a: [0, 0], b: [360, 0], c: [360, 240], d: [0, 240] } as const;
    const held = heldIn(tapedSite(marks, ['ab', 'bc', 'cd', 'da', 'ac', 'bd']));
    const from: MarkId[] = ['mark:a', 'mark:b'];
    const [a, b] = from.map((mark) => expectedError(held, [{ mark, share: 1 }], from));
    expect(a?.minor).toBeCloseTo(0, 6);
    expect(a?.major).toBeCloseTo(b?.major ?? 0, 9);
    expect(expectedError(held, [{ mark: 'mark:c', share: 1 }], from)?.major).toBeGreaterThan(
      a!.major,
    );
    expect(expectedError(held, [{ mark: 'mark:c', share: 1 }], ['mark:a'])).toBeNull();
  });
});
