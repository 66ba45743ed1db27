import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutStock } from '../../../src/engine/cut/cutStock.ts';
import type { CutLength } from '../../../src/engine/cut/cutTask.ts';
import type { CutTicket, TicketStick } from '../../../src/engine/cut/cutTicket.ts';
import { jointedTicket } from '../../../src/engine/cut/jointedTicket.ts';
import { ticketOf } from '../../../src/engine/cut/ticketOf.ts';
import { inches, sum } from '../../../src/units/inches.ts';
import type { LengthStyle } from '../../../src/units/lengthStyle.ts';
import { modelledSticks } from './cuttingModel.ts';
import { randomTask } from './randomTask.ts';

const eighths: LengthStyle = { system: 'feet', fraction: 8 };
const stick = inches(252);
const named = (lengths: readonly number[]) =>
  lengths.map((length, n) => ({ length: inches(length), for: `p${n}` }));
const lying = (...lengths: readonly (readonly [length: number, count: number])[]) =>
  lengths.map(([length, count]) => ({ length: inches(length), count }));
const told = ({ sticks }: CutTicket) =>
  sticks.map(({ from, stick: length, pieces, left }) => [
    from,
    length,
    pieces.map((piece) => piece.length),
    left,
  ]);

const joined = (rails: readonly number[], whole: readonly number[], offcuts = lying()) =>
  jointedTicket(
    { rails: named(rails), whole: named(whole), least: inches(24) },
    { stick, offcuts, kerf: inches(1 / 8) },
    eighths,
  );

/** How many sticks of each length come from the yard. */
const usedOf = ({ sticks }: { readonly sticks: readonly TicketStick[] }) => {
  const used = new Map<number, number>();
  for (const { from, stick: length } of sticks) {
    if (from === 'offcut') used.set(length, (used.get(length) ?? 0) + 1);
  }
  return used;
};

/** Invented lengths in the yard, no two alike. */
const yardOf = (n: number): readonly CutLength[] => randomTask(2 * n + 1).offcuts;

describe('what lies in the yard', () => {
  it('[L40] is cut first, also where it saves no stick but leaves more of one', () => {
    // by hand: four of 60 in and three cuts leave 11 5/8 in of 252, less the cut before it; three of them
    // 71 3/4 in, less the cut
    const pieces = named([60, 60, 60, 60]);
    const kerf = inches(1 / 8);
    const bought = ticketOf(pieces, { stick, offcuts: [], kerf }, eighths);
    expect(told(bought)).toEqual([['bought', 252, [60, 60, 60, 60], 11.5]]);
    const ticket = ticketOf(pieces, { stick, offcuts: lying([72, 1]), kerf }, eighths);
    expect(told(ticket)).toEqual([
      ['offcut', 72, [60], 11.875],
      ['bought', 252, [60, 60, 60], 71.625],
    ]);
    expect([ticket.bought, ticket.least]).toEqual([1, 1]);
    // and where it does: nothing is bought for pieces that it holds
    const none = ticketOf(pieces, { stick, offcuts: lying([60, 4]), kerf }, eighths);
    expect([none.bought, none.sticks.length, none.sticks[0]?.left]).toEqual([0, 4, 0]);
  });

  it('[L40] of plenty in the yard seldom more is cut up than a plan would buy', () => {
    const more = Array.from({ length: 200 }, (_, n) => {
      const task = randomTask(n);
      const { bought } = cutStock({ ...task, offcuts: [] });
      const plan = cutStock({ ...task, offcuts: [{ length: task.stick, count: 1000 }] });
      expect(plan.bought).toBe(0);
      return plan.ways.reduce((all, { times }) => all + times, 0) - bought;
    });
    expect(Math.min(...more)).toBeGreaterThanOrEqual(0);
    expect(more.filter((one) => one > 0).length).toBeLessThan(12);
  });

  it('[L40] takes rails with joints, and the shortest piece that it gives is one that holds', () => {
    // 25 ft of rail of one stick and 5 ft from the yard, which alone would be two
    expect(joined([300], []).bought).toBe(2);
    const ticket = joined([300], [], lying([60, 1]));
    expect([ticket.bought, ticket.least, ticket.joints]).toEqual([1, 1, 1]);
    expect(ticket.sticks[0]).toMatchObject({ from: 'offcut', stick: 60 });
    // what is shorter than any piece may be is of no use, and no bound counts it
    const short = joined([300], [], lying([23, 100]));
    expect([short.bought, short.least, usedOf(short).size]).toEqual([2, 2, 0]);
  });

  it('[L42] no length is used oftener than it lies there, and pieces, cuts and rests add up', () => {
    const lengths = fc.array(fc.integer({ min: 200, max: 9000 }), { maxLength: 10 });
    const pieces = fc.array(fc.integer({ min: 200, max: 2000 }), { maxLength: 8 });
    const there = fc.array(
      fc.tuple(fc.integer({ min: 100, max: 2400 }), fc.integer({ min: 1, max: 4 })),
      { maxLength: 5 },
    );
    fc.assert(
      fc.property(lengths, pieces, there, (rails, whole, all) => {
        const offcuts = lying(...all.map(([steps, count]) => [steps / 8, count] as const));
        const inInches = (steps: readonly number[]) => steps.map((one) => one / 8);
        const ticket = joined(inInches(rails), inInches(whole), offcuts);
        for (const [length, count] of usedOf(ticket)) {
          const own = offcuts.filter((one) => one.length === length);
          expect(count).toBeLessThanOrEqual(own.reduce((many, one) => many + one.count, 0));
        }
        for (const { stick: length, pieces: own, left } of ticket.sticks) {
          const used = sum(own.map((piece) => piece.length)) + (own.length - 1) / 8;
          expect(own.length).toBeGreaterThan(0);
          // a cut before the rest, where there is one
          expect([used + left, used + left + 1 / 8]).toContain(length);
        }
        const cut = sum(ticket.sticks.flatMap(({ pieces: own }) => own.map((one) => one.length)));
        expect(cut).toBeCloseTo(sum(named(inInches([...rails, ...whole])).map((p) => p.length)), 6);
      }),
    );
  });

  it('[L41] never makes more to buy than there is without it', () => {
    fc.assert(
      fc.property(fc.nat(100_000), (n) => {
        const task = { ...randomTask(n), offcuts: yardOf(n) };
        const without = cutStock({ ...task, offcuts: [] });
        const plan = cutStock(task);
        expect(plan.bought).toBeLessThanOrEqual(without.bought);
        expect(plan.least).toBeLessThanOrEqual(without.bought);
      }),
    );
    const lengths = fc.array(fc.integer({ min: 24, max: 900 }), { maxLength: 10 });
    const pieces = fc.array(fc.integer({ min: 24, max: 250 }), { maxLength: 6 });
    fc.assert(
      fc.property(lengths, pieces, lengths, (rails, whole, there) => {
        const offcuts = lying(...there.map((length) => [length, 1] as const));
        const ticket = joined(rails, whole, offcuts);
        expect(ticket.bought).toBeLessThanOrEqual(joined(rails, whole).bought);
        expect(ticket.least).toBeLessThanOrEqual(ticket.bought);
      }),
    );
  });

  it('[L41] one length after the other, over 600 invented tasks none makes more to buy', () => {
    const rises = Array.from({ length: 600 }, (_, n) => {
      const { offcuts: _own, ...task } = randomTask(n);
      const counts = yardOf(n).map(
        (_length, k, all) => cutStock({ ...task, offcuts: all.slice(0, k) }).bought,
      );
      return counts.some((count, k) => count > (counts[k - 1] ?? Infinity));
    });
    expect(rises.filter(Boolean)).toEqual([]);
  });

  it(
    '[L44] no more is bought than a mixed-integer solver finds for 150 invented tasks and their yards',
    { timeout: 120_000 },
    () => {
      const found = Array.from({ length: 150 }, (_, n) => {
        const task = { ...randomTask(n), offcuts: yardOf(n) };
        const { bought, least } = cutStock(task);
        return { n, bought, least, model: modelledSticks(task, 10) };
      });
      const solved = found.filter(({ model }) => model !== null);
      expect(solved.length).toBeGreaterThan(120);
      expect(solved.filter(({ bought, model }) => bought !== model)).toEqual([]);
      expect(solved.filter(({ least, model }) => least > (model ?? 0))).toEqual([]);
    },
  );
});
