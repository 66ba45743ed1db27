import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { limits } from '../../src/site/limits.ts';
import type { Hardware } from '../../src/site/hardware.ts';
import type { HardwareId } from '../../src/site/ids.ts';
import type { Parts } from '../../src/site/parts.ts';
import { createBookStore, type BookChange } from '../../src/store/bookStore.ts';
import { hardwareKind } from '../../src/store/hardwareKind.ts';
import { inches } from '../../src/units/inches.ts';
import { inventedHinge } from './invented.ts';

const start: Parts = { 'hardware:a': inventedHinge('A'), 'hardware:b': inventedHinge('B') };

const anyChange: fc.Arbitrary<BookChange<HardwareId, Hardware>> = fc.dictionary(
  fc.constantFrom('hardware:a', 'hardware:b', 'hardware:c'),
  fc.option(fc.integer({ min: 1, max: 5 }).map((n) => inventedHinge('Any', n))),
);

describe('the hardware book', () => {
  it('[H10] undo takes back every change, redo does each again', () => {
    fc.assert(
      fc.property(fc.array(anyChange), (changes) => {
        const book = createBookStore(hardwareKind, start);
        for (const change of changes) book.getState().change('Change', change);
        const last = book.getState().entries;
        const steps = book.getState().past.length;
        for (let n = 0; n < steps; n += 1) book.getState().undo();
        expect(book.getState().entries).toEqual(start);
        book.getState().undo();
        expect(book.getState().entries).toEqual(start);
        for (let n = 0; n < steps; n += 1) book.getState().redo();
        expect(book.getState().entries).toEqual(last);
      }),
    );
  });

  it('[H10] a change that changes nothing is no step, and a new one forgets what was undone', () => {
    const book = createBookStore(hardwareKind, start);
    book.getState().change('Same', { 'hardware:a': inventedHinge('A'), 'hardware:z': null });
    expect(book.getState().past).toEqual([]);
    expect(book.getState().entries).toBe(start);
    book.getState().change('Delete A', { 'hardware:a': null });
    book.getState().undo();
    book.getState().change('Delete B', { 'hardware:b': null });
    expect(book.getState().future).toEqual([]);
    expect(book.getState().past.map(({ label }) => label)).toEqual(['Delete B']);
  });

  it('[H11] undo leaves alone what another tab wrote to other entries', () => {
    const book = createBookStore(hardwareKind, start);
    book.getState().change('Change A', { 'hardware:a': inventedHinge('A', 3) });
    const theirs = inventedHinge('B', 4);
    book.getState().receive({ ...book.getState().entries, 'hardware:b': theirs });
    book.getState().undo();
    expect(book.getState().entries).toEqual({
      'hardware:a': start['hardware:a'],
      'hardware:b': theirs,
    });
  });

  it('[H12] refuses a wrong part, a wrong id and one too many in one line, and stays as it was', () => {
    const book = createBookStore(hardwareKind, start);
    const { change } = book.getState();
    const takes = { low: inches(2), planned: inches(1), high: inches(3) };
    const wrong = { ...inventedHinge('A'), takes };
    expect(() => change('Wrong', { 'hardware:a': wrong })).toThrow(
      /^book › hardware:a › takes: expected low, planned and high in rising order/,
    );
    expect(() => change('Wrong', { 'hardware:a b': inventedHinge('A') })).toThrow(
      /^book: expected/,
    );
    const many = Array.from({ length: limits.hardware }, (_, n) => [
      `hardware:n${n}`,
      inventedHinge('A'),
    ]);
    expect(() => change('Many', Object.fromEntries(many))).toThrow(
      `book: expected at most ${limits.hardware} entries, found ${limits.hardware + 2}`,
    );
    expect(book.getState().entries).toBe(start);
    expect(book.getState().past).toEqual([]);
  });
});
