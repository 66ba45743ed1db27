import { bestFill } from './bestFill.ts';
import type { FittedTask } from './fittedTask.ts';

/** A column of the relaxed task: one way to cut one stick. */
export interface Column {
  readonly counts: readonly number[];
  /** Which offcut, by its place; −1 for a stick that is bought. */
  readonly offcut: number;
}

/** The relaxed task at its best: ways with shares of times, and what nobody can do with less of. */
export interface Relaxed {
  readonly columns: readonly { readonly column: Column; readonly times: number }[];
  readonly least: number;
}

const near = 1e-9;
const mostRounds = 2000;

/** The basis of the relaxed task by its inverse: one column for each piece and each sort of offcut. */
interface Basis {
  readonly inverse: Float64Array[];
  readonly times: number[];
  /** What is in it; null for what is left over of a row. */
  readonly columns: (Column | null)[];
}

const startOf = ({ lengths, counts, room, offcuts }: FittedTask): Basis => {
  const size = lengths.length + offcuts.length;
  const inverse = Array.from({ length: size }, () => new Float64Array(size));
  const times: number[] = [];
  const columns: (Column | null)[] = [];
  lengths.forEach((length, n) => {
    const each = Math.max(1, Math.min(counts[n] ?? 1, Math.floor(room / length)));
    const row = inverse[n];
    if (row !== undefined) row[n] = 1 / each;
    times.push((counts[n] ?? 0) / each);
    columns.push({ counts: lengths.map((_, m) => (m === n ? each : 0)), offcut: -1 });
  });
  offcuts.forEach(({ has }, n) => {
    const row = inverse[lengths.length + n];
    if (row !== undefined) row[lengths.length + n] = 1;
    times.push(has);
    columns.push(null);
  });
  return { inverse, times, columns };
};

/** What one more of each row would cost. */
const pricesOf = ({ inverse, columns }: Basis): Float64Array => {
  const prices = new Float64Array(columns.length);
  columns.forEach((column, n) => {
    if (column === null || column.offcut >= 0) return;
    inverse[n]?.forEach((share, m) => {
      prices[m] = (prices[m] ?? 0) + share;
    });
  });
  return prices;
};

/** A column to enter, by its entries in the rows; null where it is what is left over of a row. */
interface Entering {
  readonly entries: Float64Array;
  readonly column: Column | null;
}

/** Takes a column into the basis for the one that it drives out; false where none gives way. */
const enter = (basis: Basis, { entries, column }: Entering): boolean => {
  const { inverse, times, columns } = basis;
  const moved = inverse.map((row) => {
    let sum = 0;
    for (let m = 0; m < entries.length; m += 1) sum += (row[m] ?? 0) * (entries[m] ?? 0);
    return sum;
  });
  let [out, least] = [-1, Infinity];
  moved.forEach((move, n) => {
    if (move <= near) return;
    const ratio = (times[n] ?? 0) / move;
    if (ratio < least - near) [out, least] = [n, ratio];
  });
  const pivotRow = inverse[out];
  if (pivotRow === undefined) return false;
  const pivot = moved[out] ?? 1;
  for (let m = 0; m < pivotRow.length; m += 1) pivotRow[m] = (pivotRow[m] ?? 0) / pivot;
  inverse.forEach((row, n) => {
    const by = moved[n] ?? 0;
    if (n === out || by === 0) return;
    for (let m = 0; m < row.length; m += 1) row[m] = (row[m] ?? 0) - by * (pivotRow[m] ?? 0);
  });
  times.forEach((time, n) => {
    times[n] = n === out ? least : Math.max(0, time - least * (moved[n] ?? 0));
  });
  columns[out] = column;
  return true;
};

const entriesOf = (size: number, { counts, offcut }: Column): Float64Array => {
  const entries = new Float64Array(size);
  counts.forEach((count, n) => (entries[n] = count));
  if (offcut >= 0) entries[counts.length + offcut] = 1;
  return entries;
};

const unit = (size: number, row: number, sign: 1 | -1): Float64Array => {
  const entries = new Float64Array(size);
  entries[row] = sign;
  return entries;
};

/** One round: what no plan can do with less of by these prices, and the column that would gain the most. */
const priced = (
  task: FittedTask,
  prices: Float64Array,
): { readonly bound: number; readonly entering: Entering | null } => {
  const { lengths, counts, room, offcuts } = task;
  const size = lengths.length + offcuts.length;
  const worth = lengths.map((_, n) => Math.max(0, prices[n] ?? 0));
  const fillOf = (own: number) => bestFill({ lengths, worth, most: counts, room: own });
  const bought = fillOf(room);
  const filled = offcuts.map((offcut) => fillOf(offcut.room));
  const given = filled.reduce((sum, { worth: most }, n) => sum + most * (offcuts[n]?.has ?? 0), 0);
  const asked = worth.reduce((sum, each, n) => sum + each * (counts[n] ?? 0), 0);
  const bound = bought.worth > 0 ? (asked - given) / bought.worth : 0;
  let entering: Entering | null = null;
  let gain = near;
  const offer = (gains: number, make: () => Entering) => {
    if (gains <= gain) return;
    gain = gains;
    entering = make();
  };
  offer(bought.worth - 1, () => {
    const column = { counts: bought.counts, offcut: -1 };
    return { entries: entriesOf(size, column), column };
  });
  filled.forEach((one, n) =>
    offer(one.worth + (prices[lengths.length + n] ?? 0), () => {
      const column = { counts: one.counts, offcut: n };
      return { entries: entriesOf(size, column), column };
    }),
  );
  lengths.forEach((_, n) =>
    offer(-(prices[n] ?? 0), () => ({ entries: unit(size, n, -1), column: null })),
  );
  offcuts.forEach((_, n) =>
    offer(prices[lengths.length + n] ?? 0, () => ({
      entries: unit(size, lengths.length + n, 1),
      column: null,
    })),
  );
  return { bound, entering };
};

/**
 * The least number of sticks that nobody can do with less of: the task with shares of sticks allowed, by
 * column generation (Gilmore and Gomory 1961), and of every round the bound that its prices prove
 * (Farley 1990) whether or not the rounds came to an end.
 */
export const leastSticks = (task: FittedTask): Relaxed => {
  const basis = startOf(task);
  let best = 0;
  for (let round = 0; round < mostRounds; round += 1) {
    const { bound, entering } = priced(task, pricesOf(basis));
    best = Math.max(best, bound);
    if (entering === null || !enter(basis, entering)) break;
  }
  return {
    columns: basis.columns.flatMap((column, n) => {
      const times = basis.times[n] ?? 0;
      return column === null || times <= near ? [] : [{ column, times }];
    }),
    least: Math.max(0, Math.ceil(best - 1e-6)),
  };
};
