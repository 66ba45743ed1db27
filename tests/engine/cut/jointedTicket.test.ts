import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CutTicket } from '../../../src/engine/cut/cutTicket.ts';
import { inFewest, jointedTicket } from '../../../src/engine/cut/jointedTicket.ts';
import { inches } from '../../../src/units/inches.ts';
import type { LengthStyle } from '../../../src/units/lengthStyle.ts';

const eighths: LengthStyle = { system: 'feet', fraction: 8 };
const millimetres: LengthStyle = { system: 'mm', fraction: 8 };
const sticks = { stick: inches(252), offcuts: [], kerf: inches(0) };
const named = (lengths: readonly number[]) =>
  lengths.map((length, n) => ({ length: inches(length), for: `r${n}` }));
const cut = (rails: readonly number[], whole: readonly number[] = [], given = sticks) =>
  jointedTicket({ rails: named(rails), whole: named(whole), least: inches(24) }, given, eighths);

const totals = ({ sticks: all }: CutTicket): ReadonlyMap<string, number> => {
  const found = new Map<string, number>();
  for (const { length, for: name } of all.flatMap(({ pieces }) => pieces)) {
    found.set(name, (found.get(name) ?? 0) + length);
  }
  return found;
};

describe('rails that may be joined', () => {
  it('[L25] 54 ft of rail is three sticks of 21 ft with two joints', () => {
    // derived from the stick of 21 ft: ⌈54 ÷ 21⌉, one joint fewer than pieces
    const ticket = cut([648]);
    expect([ticket.bought, ticket.joints, ticket.least]).toEqual([3, 2, 3]);
    expect(ticket.sticks.map(({ pieces }) => pieces.map(({ length }) => length))).toEqual([
      [252],
      [252],
      [144],
    ]);
  });

  it('[L25] a rest that is too short to hold is made longer at the cost of the piece before', () => {
    expect(inFewest(inches(262), inches(252), inches(24))).toEqual([238, 24]);
    expect(inFewest(inches(514), inches(252), inches(24))).toEqual([252, 238, 24]);
    expect(inFewest(inches(504), inches(252), inches(24))).toEqual([252, 252]);
    expect(inFewest(inches(10), inches(252), inches(24))).toEqual([10]);
  });

  it('[L25] where more joints save a stick, a rail begins with what the one before left over', () => {
    // three of 13 ft: 39 ft of two sticks; with no joint it would be three
    const ticket = cut([156, 156, 156]);
    expect([ticket.bought, ticket.least]).toEqual([2, 2]);
    expect(ticket.joints).toBe(1);
  });

  it('[L25] pieces without joints are cut whole, and rails use what they leave', () => {
    const ticket = cut([120], [130, 130]);
    expect(ticket.bought).toBe(2);
    const whole = ticket.sticks
      .flatMap(({ pieces }) => pieces)
      .filter(({ length }) => length === 130);
    expect(whole).toHaveLength(2);
    expect(cut([], [253]).tooLong).toEqual([{ length: 253, for: 'r0' }]);
  });

  it('[L25] braces go one to a stick where two would leave too little for rail', () => {
    // by hand: ten of 9 ft 10 in and 2,265 in of rail are 3,445 in, 14 sticks of 252; two braces to a stick
    // would leave 16 in of it, less than any piece of rail, and take 15
    const rails = [597.625, 597.625, 597.625, 236, 236];
    const braces = Array.from({ length: 10 }, () => 118);
    const ticket = cut(rails, braces);
    expect([ticket.bought, ticket.least]).toEqual([14, 14]);
  });

  it('[L25] metric lengths are whole millimetres, and three of 2 m are one stick of 6 m', () => {
    const ticket = jointedTicket(
      {
        rails: [],
        whole: named([2000 / 25.4, 2000 / 25.4, 2000 / 25.4]),
        least: inches(24),
      },
      { ...sticks, stick: inches(6000 / 25.4) },
      millimetres,
    );
    expect(ticket.bought).toBe(1);
  });

  it('[L26] covers every rail and piece, never overfills a stick, leaves no piece too short, and keeps the bound', () => {
    const lengths = fc.array(fc.integer({ min: 200, max: 9000 }), { maxLength: 12 });
    const pieces = fc.array(fc.integer({ min: 200, max: 2000 }), { maxLength: 8 });
    const offcuts = fc.array(fc.integer({ min: 300, max: 1900 }), { maxLength: 3 });
    fc.assert(
      fc.property(
        lengths,
        pieces,
        offcuts,
        fc.constantFrom(0, 1 / 8),
        (rails, whole, left, kerf) => {
          const asked = {
            rails: rails.map((steps, n) => ({ length: inches(steps / 8), for: `rail ${n}` })),
            whole: whole.map((steps, n) => ({ length: inches(steps / 8), for: `piece ${n}` })),
            least: inches(24),
          };
          const given = {
            stick: inches(252),
            offcuts: left.map((steps) => ({ length: inches(steps / 8), count: 1 })),
            kerf: inches(kerf),
          };
          const ticket = jointedTicket(asked, given, eighths);
          const got = totals(ticket);
          for (const { for: name, length } of [...asked.rails, ...asked.whole]) {
            expect(got.get(name)).toBeCloseTo(length, 9);
          }
          for (const { stick, pieces: own, left: rest } of ticket.sticks) {
            const used = own.reduce((sum, { length }) => sum + length, 0);
            expect(used + (own.length - 1) * kerf + rest).toBeLessThanOrEqual(stick + 1e-9);
            for (const { length, for: name } of own) {
              const of = [...asked.rails, ...asked.whole].find((one) => one.for === name);
              expect(length).toBeGreaterThanOrEqual(Math.min(24, of?.length ?? 0) - 1e-9);
            }
          }
          const bought = ticket.sticks.filter(({ from }) => from === 'bought').length;
          expect(ticket.bought).toBe(bought);
          expect(ticket.least).toBeLessThanOrEqual(ticket.bought);
          const many = ticket.sticks.flatMap(({ pieces: own }) => own).length;
          expect(ticket.joints).toBe(many - rails.length - whole.length);
        },
      ),
    );
  });
});
