import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { RunEnd, Slot } from '../../../src/engine/posts/links.ts';
import { seatGates } from '../../../src/engine/posts/seatGates.ts';
import { inches } from '../../../src/units/inches.ts';

/** An end post of 2 in in a hole of 10 in. */
const end = (station: number): RunEnd => ({ station, od: inches(2), hole: inches(10) });

/** A gate of 48 in with posts of 4 in in holes of 18 in: 52 in between centres, reach 14 in to an end. */
const slot = (id: string, at: number, held: Slot['held'] = 'start'): Slot => ({
  id: `gate:${id}`,
  width: inches(48),
  od: inches(4),
  hole: inches(18),
  radius: null,
  held,
  at,
});

const seated = (slots: readonly Slot[], length: number) => {
  const { seats, misfits } = seatGates(slots, end(0), end(length));
  return {
    at: seats.map((seat) => [seat.id.slice(5), seat.start, seat.end]),
    out: misfits.map(({ id, why, missing, other }) => [id.slice(5), why, missing, other]),
    seats,
  };
};

describe('seatGates', () => {
  it('[P5] a gate away from everything stands where it was put', () => {
    expect(seated([slot('a', 100)], 300).at).toEqual([['a', 100, 152]]);
    expect(seated([slot('a', 152, 'end')], 300).at).toEqual([['a', 100, 152]]);
    expect(seated([slot('a', 126, 'middle')], 300).at).toEqual([['a', 100, 152]]);
  });

  it('[P7] within reach of the end post it hangs from that post, opening from its face', () => {
    const { at, seats } = seated([slot('a', 13.9)], 300);
    // the end post takes the larger diameter, 4 in
    expect(at).toEqual([['a', 0, 52]]);
    expect(seats[0]).toMatchObject({ startWith: 'run', endWith: null, startOd: 4 });
  });

  it('[P7] holes that just touch stay two holes, from either end', () => {
    expect(seated([slot('a', 14)], 300).seats[0]?.startWith).toBe(null);
    expect(seated([slot('a', 300.7 - 14, 'end')], 300.7).seats[0]?.endWith).toBe(null);
  });

  it('[P7] a gate that fills the run to 1/16 in hangs from both ends', () => {
    for (const length of [52, 52 + 1 / 16, 52 - 1 / 16]) {
      const { seats, out } = seated([slot('a', 0)], length);
      expect(out).toEqual([]);
      expect(seats[0]).toMatchObject({ startWith: 'run', endWith: 'run' });
    }
  });

  it('[F1] a gate that nearly fills the run, or is wider, has no place and says by how much', () => {
    expect(seated([slot('a', 0)], 51).out).toEqual([['a', 'wider than its run', 1, null]]);
    // 0.5 in to either end post, where half of 4 in and half of 2 in must stand
    expect(seated([slot('a', 26.5, 'middle')], 53).out).toEqual([['a', 'past the end', 2.5, null]]);
  });

  it('[F1] a gate put past the end has no place', () => {
    expect(seated([slot('a', 290)], 300).out).toEqual([['a', 'past the end', 45, null]]);
    expect(seated([slot('a', -60)], 300).out).toEqual([['a', 'past the end', 63, null]]);
  });

  it('[P8] two gates whose near posts would meet share one, midway', () => {
    const { at, seats } = seated([slot('a', 100), slot('b', 160)], 400);
    // 8 in between the near centres, 152 and 160
    expect(at).toEqual([
      ['a', 104, 156],
      ['b', 156, 208],
    ]);
    expect(seats.map(({ startWith, endWith }) => [startWith, endWith])).toEqual([
      [null, 'gate'],
      ['gate', null],
    ]);
  });

  it('[P8] beside a gate that hangs from the end post the other gate moves', () => {
    expect(seated([slot('a', 3), slot('b', 60)], 400).at).toEqual([
      ['a', 0, 52],
      ['b', 52, 104],
    ]);
  });

  it('[F2] of two gates over each other the later id gives way to one that stays', () => {
    const { at, out } = seated([slot('c', 110), slot('a', 100), slot('b', 105)], 400);
    expect(at).toEqual([['a', 100, 152]]);
    // b: 152 - 105 between centres and half of two posts more
    expect(out).toEqual([
      ['b', 'over another gate', 51, 'gate:a'],
      ['c', 'over another gate', 46, 'gate:a'],
    ]);
  });

  it('[F2] two gates in one place share no post, however wide their holes are', () => {
    const narrow = (id: string): Slot => ({
      ...slot(id, 100),
      width: inches(20),
      hole: inches(60),
    });
    const { at, out } = seated([narrow('a'), narrow('b')], 400);
    expect(at).toEqual([['a', 100, 124]]);
    // 20 and two whole posts of 4 in: what they stand over each other
    expect(out).toEqual([['b', 'over another gate', 28, 'gate:a']]);
  });

  it('[F2] thousands of gates on one spot leave one, soon', () => {
    const many = Array.from({ length: 3000 }, (_, n) => slot(`${n}`.padStart(4, '0'), 100));
    const { at, out } = seated(many, 400);
    expect(at.map(([id]) => id)).toEqual(['0000']);
    expect(out.length).toBe(2999);
    expect(new Set(out.map(([, , , other]) => other))).toEqual(new Set(['gate:0000']));
  });

  const anySlots = fc
    .array(
      fc.record({
        at: fc.integer({ min: -400, max: 9600 }).map((n) => n / 16),
        held: fc.constantFrom('start' as const, 'end' as const, 'middle' as const),
        width: fc.integer({ min: 320, max: 2400 }).map((n) => inches(n / 16)),
        od: fc.constantFrom(inches(2.375), inches(4), inches(6.625)),
        hole: fc.constantFrom(inches(10), inches(18), inches(36)),
        radius: fc.constant(null),
      }),
      { minLength: 1, maxLength: 8 },
    )
    .map((slots) => slots.map((each, n): Slot => ({ ...each, id: `gate:${n}` })));
  const anyLength = fc.integer({ min: 320, max: 9600 }).map((n) => n / 16);

  it('[P3] a gate that is 1/16 in too wide for its run lies evenly between both end posts', () => {
    // 48 and two half posts of 4 in are 52
    const { at, seats } = seated([slot('a', 0)], 52 - 1 / 16);
    expect(at).toEqual([['a', -1 / 32, 52 - 1 / 32]]);
    expect(seats[0]).toMatchObject({ startWith: 'run', endWith: 'run' });
  });

  it('[P3] the run seen from its other end has the same gates in the same places', () => {
    const opposite = { start: 'end', end: 'start', middle: 'middle' } as const;
    fc.assert(
      fc.property(anySlots, anyLength, (slots, length) => {
        const there = seatGates(slots, end(0), end(length));
        const turned = slots.map((each) => ({
          ...each,
          at: length - each.at,
          held: opposite[each.held],
        }));
        const back = seatGates(turned, end(0), end(length));
        const mirrored = back.seats.toReversed();
        expect(mirrored.map(({ id }) => id)).toEqual(there.seats.map(({ id }) => id));
        const off = mirrored.map((seat, n) => {
          const same = there.seats[n];
          return Math.abs(length - seat.end - (same?.start ?? NaN));
        });
        expect(off.filter((by) => !(by < 1e-6))).toEqual([]);
      }),
      { numRuns: 2000 },
    );
  });

  it('[P4] every gate is seated or has a reason, and those seated rise along the run', () => {
    fc.assert(
      fc.property(anySlots, anyLength, (slots, length) => {
        const { seats, misfits } = seatGates(slots, end(0), end(length));
        const told = [...seats, ...misfits].map(({ id }) => id).toSorted();
        expect(told).toEqual(slots.map(({ id }) => id).toSorted());
        expect(misfits.filter(({ missing }) => !(missing > 0))).toEqual([]);
        const nodes = seats.flatMap((seat) =>
          seat.startWith === 'gate' ? [seat.end] : [seat.start, seat.end],
        );
        expect(nodes).toEqual(nodes.toSorted((a, b) => a - b));
      }),
      { numRuns: 1000 },
    );
  });

  it('[P5] every seated gate has its opening between the faces of its posts', () => {
    fc.assert(
      fc.property(anySlots, anyLength, (slots, length) => {
        const widths = new Map(slots.map(({ id, width }) => [id, width]));
        const off = seatGates(slots, end(0), end(length)).seats.filter((seat) => {
          const clear = seat.end - seat.start - (seat.startOd + seat.endOd) / 2;
          return !(Math.abs(clear - (widths.get(seat.id) ?? NaN)) < 1e-9);
        });
        expect(off).toEqual([]);
      }),
      { numRuns: 1000 },
    );
  });
});
