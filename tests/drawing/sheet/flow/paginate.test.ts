import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Block, Stack } from '../../../../src/drawing/sheet/flow/block.ts';
import { columnsIn, paginate } from '../../../../src/drawing/sheet/flow/paginate.ts';
import { lineOfText } from '../../../../src/drawing/sheet/lineOfText.ts';
import { textsOf } from '../../textsOf.ts';

const room = { x: 1, y: 2, width: 15, height: 6 };
const block = (text: string, height: number): Block => ({
  height,
  atoms: lineOfText(text, 0, height / 2),
});
const stack = (name: string, heights: readonly number[]): Stack => ({
  part: name,
  head: block(`${name} head`, 0.4),
  again: block(`${name} again`, 0.4),
  rows: heights.map((height, n) => block(`${name} ${n}`, height)),
  gap: 0.2,
});

const heights = fc.array(fc.double({ min: 0.1, max: 1.5, noNaN: true }), {
  minLength: 1,
  maxLength: 30,
});

describe('paginate', () => {
  it('[D21] keeps every row, in order, inside the room', () => {
    fc.assert(
      fc.property(fc.array(heights, { minLength: 1, maxLength: 6 }), (all) => {
        const stacks = all.map((own, n) => stack(`T${n}`, own));
        const pages = paginate(stacks, room);
        const { width } = columnsIn(room);
        const texts = pages.flatMap(({ atoms }) => textsOf(atoms));
        const rows = texts.map(({ text }) => text).filter((text) => /^T\d+ \d+$/.test(text));
        expect(rows).toEqual(all.flatMap((own, n) => own.map((_, row) => `T${n} ${row}`)));
        for (const { at } of texts) {
          expect(at.y).toBeGreaterThan(room.y);
          expect(at.y).toBeLessThan(room.y + room.height);
          expect([room.x, room.x + room.width - width]).toContainEqual(expect.closeTo(at.x, 9));
        }
      }),
    );
  });

  it('[D21] repeats the head where rows go on, and never leaves one alone', () => {
    fc.assert(
      fc.property(fc.array(heights, { minLength: 1, maxLength: 6 }), (all) => {
        const stacks = all.map((own, n) => stack(`T${n}`, own));
        const texts = paginate(stacks, room).flatMap(({ atoms }) => textsOf(atoms));
        texts.forEach(({ text, at }, n) => {
          if (/head|again/.test(text)) {
            const next = texts[n + 1];
            expect(next?.text).toMatch(new RegExp(`^${text.split(' ')[0]} \\d+$`));
            expect(next?.at.x).toBe(at.x);
          } else if (texts[n - 1] !== undefined && texts[n - 1]?.at.x !== at.x) {
            // the first thing in a column is a head
            expect.fail(`${text} stands at the top without its head`);
          }
        });
      }),
    );
  });

  it('[D35] names a page for all parts on it', () => {
    const pages = paginate([stack('A', Array(26).fill(1)), stack('B', [1])], room);
    // five rows of 1 in under a head of 0.4 in fill a column of 6 in, and two columns a page
    expect(pages.map(({ parts }) => parts)).toEqual([['A'], ['A'], ['A', 'B']]);
  });

  it('[D35] lets no last row go on alone where two have room together', () => {
    // five rows of 1 in fit under a head of 0.4 in
    const firstColumn = (count: number): number => {
      const [page] = paginate([stack('A', Array(count).fill(1))], room);
      const texts = textsOf(page?.atoms ?? []).filter(({ text }) => /^A \d+$/.test(text));
      return texts.filter(({ at }) => at.x === texts[0]?.at.x).length;
    };
    expect([5, 6, 7].map(firstColumn)).toEqual([5, 4, 5]);
  });

  it('sets one column on narrow paper and several on wide', () => {
    expect(columnsIn({ ...room, width: 7 }).count).toBe(1);
    expect(columnsIn({ ...room, width: 35 })).toEqual({
      count: 5,
      width: (35 - 4 * 0.35) / 5,
      height: 6,
    });
  });
});
