import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutStock } from '../../../src/engine/cut/cutStock.ts';
import type { CutPlan, CutTask } from '../../../src/engine/cut/cutTask.ts';
import { modelledSticks } from './cuttingModel.ts';
import { randomTask } from './randomTask.ts';

/** How many of each piece a plan cuts. */
const cutOf = ({ ways }: CutPlan, { pieces }: CutTask): number[] =>
  pieces.map((_, n) => ways.reduce((sum, { times, counts }) => sum + times * (counts[n] ?? 0), 0));

/** What one stick cut so is used up by, kerfs between the pieces and before a rest. */
const usedBy = (counts: readonly number[], { pieces, kerf }: CutTask, stick: number): number => {
  const many = counts.reduce((sum, count) => sum + count, 0);
  const length = counts.reduce((sum, count, n) => sum + count * (pieces[n]?.length ?? 0), 0);
  const rest = stick - length - (many - 1) * kerf;
  return rest > 0 ? stick - Math.max(0, rest - kerf) : stick - rest;
};

const task = (fields: Partial<CutTask>): CutTask => ({
  pieces: [],
  stick: 2016,
  offcuts: [],
  kerf: 0,
  ...fields,
});

describe('cutting sticks', () => {
  it('[L20] the worked example of four widths: 453 raws of 100 in for 97, 610, 395 and 211 pieces', () => {
    // Gilmore and Gomory's example as in V. Chvátal, Linear Programming (1983) ch. 13: final rolls of 45, 36, 31
    // and 14 in from raws of 100 in, least 452.25 shares of raws; from memory
    const plan = cutStock(
      task({
        stick: 100,
        pieces: [
          { length: 45, count: 97 },
          { length: 36, count: 610 },
          { length: 31, count: 395 },
          { length: 14, count: 211 },
        ],
      }),
    );
    expect(plan.bought).toBe(453);
    expect(plan.least).toBe(453);
  });

  it('[L20] two pieces to the stick are two to the stick, and with a kerf one where they would just fit', () => {
    const pieces = [{ length: 1008, count: 9 }];
    expect(cutStock(task({ pieces })).bought).toBe(5);
    expect(cutStock(task({ pieces, kerf: 1 })).bought).toBe(9);
    // a stick that is one piece has no cut
    expect(cutStock(task({ pieces: [{ length: 2016, count: 3 }], kerf: 1 })).bought).toBe(3);
  });

  it('[L21] what is longer than a stick is named and the rest is cut', () => {
    const pieces = [
      { length: 2017, count: 2 },
      { length: 500, count: 4 },
    ];
    const plan = cutStock(task({ pieces }));
    expect(plan.tooLong).toEqual([0]);
    expect(plan.bought).toBe(1);
    expect(cutOf(plan, task({ pieces }))).toEqual([0, 4]);
  });

  it('[L22] offcuts are used before a stick is bought', () => {
    const pieces = [{ length: 700, count: 4 }];
    expect(cutStock(task({ pieces })).bought).toBe(2);
    const offcuts = [{ length: 1400, count: 1 }];
    const plan = cutStock(task({ pieces, offcuts }));
    expect(plan.bought).toBe(1);
    expect(plan.ways.map(({ from, stick, times }) => [from, stick, times])).toEqual([
      ['offcut', 1400, 1],
      ['bought', 2016, 1],
    ]);
    expect(cutStock(task({ pieces, offcuts: [{ length: 700, count: 4 }] })).bought).toBe(0);
  });

  it('[L20] nothing to cut buys nothing; lengths that are no whole steps are refused', () => {
    expect(cutStock(task({}))).toEqual({ ways: [], bought: 0, least: 0, tooLong: [] });
    expect(() => cutStock(task({ pieces: [{ length: 1.5, count: 1 }] }))).toThrow(
      'expected whole steps above 0, found 1.5',
    );
    expect(() => cutStock(task({ kerf: -1 }))).toThrow('found -1');
  });

  it('[L23] covers what is asked for, never overfills a stick, never uses an offcut twice, never under the bound', () => {
    fc.assert(
      fc.property(fc.nat(100_000), (n) => {
        const asked = randomTask(n);
        const plan = cutStock(asked);
        expect(cutOf(plan, asked)).toEqual(asked.pieces.map(({ count }) => count));
        for (const { counts, stick } of plan.ways) {
          expect(usedBy(counts, asked, stick)).toBeLessThanOrEqual(stick);
        }
        for (const { length, count } of asked.offcuts) {
          const cut = plan.ways
            .filter(({ from, stick }) => from === 'offcut' && stick === length)
            .reduce((sum, { times }) => sum + times, 0);
          expect(cut).toBeLessThanOrEqual(count);
        }
        expect(plan.least).toBeLessThanOrEqual(plan.bought);
      }),
    );
  });

  it('[L23] more to cut never buys less', () => {
    fc.assert(
      fc.property(fc.nat(100_000), fc.nat(20), (n, at) => {
        const asked = randomTask(n);
        const more = asked.pieces.map((piece, m) =>
          m === at % asked.pieces.length ? { ...piece, count: piece.count + 1 } : piece,
        );
        const [before, after] = [cutStock(asked), cutStock({ ...asked, pieces: more })];
        // where a count is not proven it may come out one too high
        if (before.bought === before.least) {
          expect(after.bought).toBeGreaterThanOrEqual(before.bought);
        }
      }),
    );
  });

  it(
    '[L24] as few sticks as a mixed-integer solver finds for 500 invented tasks',
    { timeout: 120_000 },
    () => {
      const found = Array.from({ length: 500 }, (_, n) => {
        const asked = randomTask(n);
        const { bought, least } = cutStock(asked);
        return { n, bought, least, model: modelledSticks(asked, 10) };
      });
      const solved = found.filter(({ model }) => model !== null);
      expect(solved.length).toBeGreaterThan(450);
      expect(solved.filter(({ bought, model }) => bought !== model)).toEqual([]);
      expect(solved.filter(({ least, model }) => least > (model ?? 0))).toEqual([]);
    },
  );
});
