import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { levelBook, type LevelBook } from '../../../src/engine/ground/levelBook.ts';
import type { LevelRow } from '../../../src/engine/ground/levelRow.ts';
import { inches } from '../../../src/units/inches.ts';

type Said = Partial<Record<'bs' | 'is' | 'fs' | 'known' | 'distance', number>>;

const row = (point: string, { bs, is, fs, known, distance }: Said): LevelRow => ({
  point,
  backsight: bs === undefined ? null : inches(bs),
  intermediate: is === undefined ? null : inches(is),
  foresight: fs === undefined ? null : inches(fs),
  known: known === undefined ? null : inches(known),
  distance: distance ?? null,
});

const worked = (rows: readonly LevelRow[], allowable: number | null = null): LevelBook => {
  const book = levelBook(rows, allowable === null ? null : inches(allowable));
  if (!book.ok) throw new Error(book.reason);
  return book.value;
};

const fault = (...rows: readonly LevelRow[]): string => {
  const book = levelBook(rows, null);
  return book.ok ? 'none' : book.reason;
};

// published: R. Rode, "Collimation method to reduce a leveling field book page", the example page:
// six setups from BM1 at 106.366 to BM2, given as 105.263; metres there, and the unit is carried
const published = [
  row('BM1', { bs: 1.216, known: 106.366 }),
  row('a', { is: 0.025 }),
  row('b', { is: 1.555 }),
  row('bd1', { fs: 2.508, bs: 1.386 }),
  row('c', { is: 3.625 }),
  row('bd2', { fs: 1.196, bs: 1.235 }),
  row('d', { fs: 3.566, bs: 3.655 }),
  row('e', { fs: 0.506, bs: 2.126 }),
  row('f', { is: 2.605 }),
  row('g', { is: 1.094 }),
  row('h', { fs: 3.628, bs: 1.125 }),
  row('i', { is: 1.394 }),
  row('BM2', { fs: 0.484, known: 105.263 }),
];

describe('levelBook', () => {
  it('[R9] a published page comes out as it is printed', () => {
    const { points, backsights, foresights, rise, closing } = worked(published);
    const heights = (values: readonly number[]) => values.map((value) => value.toFixed(3));
    expect(heights(points.map(({ reduced }) => reduced))).toEqual(
      heights([
        106.366, 107.557, 106.027, 105.074, 102.835, 105.264, 102.933, 106.082, 105.603, 107.114,
        104.58, 104.311, 105.221,
      ]),
    );
    expect(heights(points.map(({ height }) => height))).toEqual(
      heights([
        106.366, 107.564, 106.034, 105.081, 102.849, 105.278, 102.954, 106.11, 105.638, 107.149,
        104.615, 104.353, 105.263,
      ]),
    );
    const instruments = new Set(points.flatMap(({ instrument }) => instrument ?? []));
    expect(heights([...instruments])).toEqual(
      heights([107.582, 106.46, 106.499, 106.588, 108.208, 105.705]),
    );
    expect(heights([backsights, foresights, rise])).toEqual(heights([10.743, 11.888, -1.145]));
    expect(closing?.misclosure).toBeCloseTo(-0.042, 9);
    expect(closing?.spread).toBe('setups');
  });

  // inputs: a published sample problem, a circuit of 30.5 km from BM1 at 728.730 m that comes back
  // at 728.486 m; the corrections are derived from them, 0.244 m ÷ 30.5 km = 8 mm a km
  it('[R9] where every setup has its distance the misclosure goes by distance', () => {
    const marks = [
      ['BM2', 5.245, 783.213],
      ['BM3', 11.271, 891.764],
      ['BM4', 17.718, 843.195],
      ['BM5', 21.964, 739.708],
      ['BM6', 25.247, 702.956],
      ['BM1', 30.5, 728.486],
    ] as const;
    // each setup with a backsight of 200: its foresight is what makes up the height
    const rows = marks.map(([name, run, height], n) => {
      const [before, from] =
        n === 0 ? [728.73, 0] : [marks[n - 1]?.[2] ?? 0, marks[n - 1]?.[1] ?? 0];
      const fs = before + 200 - height;
      return row(name, { fs, distance: run - from, ...(name === 'BM1' ? {} : { bs: 200 }) });
    });
    const book = worked([row('BM1', { bs: 200, known: 728.73 }), ...rows]);
    expect(book.closing?.spread).toBe('distances');
    expect(book.closing?.misclosure).toBeCloseTo(-0.244, 9);
    expect(book.points.map(({ height }) => height.toFixed(3))).toEqual([
      '728.730',
      '783.255',
      '891.854',
      '843.337',
      '739.884',
      '703.158',
      '728.730',
    ]);
  });

  it('[R9] more than is allowed is not spread', () => {
    const { closing, points } = worked(published, 0.04);
    expect(closing?.spread).toBe('not');
    expect(closing?.allowable).toBe(0.04);
    expect(points.every(({ reduced, height }) => reduced === height)).toBe(true);
    expect(worked(published, 0.05).points.at(-1)?.height).toBeCloseTo(105.263, 9);
  });

  it('[R9] backsights less foresights are the rise, and a closed run ends where it is known', () => {
    const reading = fc.integer({ min: 0, max: 160 * 8 }).map((n) => n / 8);
    fc.assert(
      fc.property(
        fc.array(fc.tuple(reading, reading, reading), { minLength: 1, maxLength: 12 }),
        reading,
        (setups, start) => {
          const rows = setups.flatMap(([bs, is, fs], n) => [
            ...(n === 0 ? [row('BM', { bs, known: start })] : []),
            row(`p${n}`, { is }),
            n === setups.length - 1
              ? row('BM', { fs })
              : row(`TP${n}`, { fs, bs: setups[n + 1]?.[0] ?? 0 }),
          ]);
          const { backsights, foresights, rise, closing, points } = worked(rows);
          expect(backsights - foresights).toBe(rise);
          expect(closing?.misclosure).toBe(rise);
          expect(points.at(-1)?.height).toBeCloseTo(start, 9);
          for (const { correction, setup } of points) {
            expect(correction).toBeCloseTo((-rise * setup) / setups.length, 9);
          }
        },
      ),
    );
  });

  it('[R9] a run that does not close is worked out and has no closing', () => {
    const open = worked([
      row('BM', { bs: 48, known: 100 }),
      row('TP', { fs: 60, bs: 30 }),
      row('p', { is: 20 }),
    ]);
    expect(open.closing).toBeNull();
    expect(open.points.map(({ height }) => height)).toEqual([100, 88, 98]);
    expect([open.backsights, open.foresights, open.rise]).toEqual([48, 60, -12]);
  });

  it('[R10] bad notes get one line that names the row and what was expected', () => {
    const start = row('BM', { bs: 48, known: 100 });
    expect(fault()).toBe('the level notes have no row: expected a backsight on a benchmark');
    expect(fault(row('BM', { bs: 48 }))).toBe(
      'row 1 (BM) starts from a height of nothing: expected the known height of a benchmark',
    );
    expect(fault(row('BM', { fs: 4, known: 100 }))).toBe(
      'row 1 (BM) has no backsight: expected one on the benchmark',
    );
    expect(fault(start, row('a', {}))).toBe(
      'row 2 (a) has no reading: expected a backsight, an intermediate sight or a foresight',
    );
    expect(fault(start, row('a', { is: -3 }))).toBe(
      'row 2 (a) has an intermediate sight of -3 in: expected a rod reading, 0 or more',
    );
    expect(fault(start, row('a', { is: 3, fs: 3 }))).toBe(
      'row 2 (a) has an intermediate sight and another: expected that alone, or a foresight and a backsight',
    );
    expect(fault(start, row('a', { bs: 3 }))).toBe(
      'row 2 (a) has a backsight without a foresight: expected both on a turning point',
    );
    expect(fault(start, row('a', { fs: 3 }), row('b', { is: 3 }))).toBe(
      'row 3 (b) follows the foresight of row 2: expected a backsight there first',
    );
    expect(fault(start, row('a', { is: 3, known: 5 }))).toBe(
      'row 2 (a) has a known height of 5 in: expected that on the first row and on the last foresight',
    );
    expect(fault(start, row('a', { fs: 3, distance: -5 }))).toBe(
      'row 2 (a) has a distance of -5: expected 0 or more',
    );
  });
});
