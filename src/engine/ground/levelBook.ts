import { inches, sum, type Inches } from '../../units/inches.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { levelFault } from './levelFault.ts';
import type { LevelRow } from './levelRow.ts';

/** A point whose height was levelled; inches. */
export interface LevelledPoint {
  readonly point: string;
  /** Which setup it was read from, counted from 1; 0 for the benchmark at the start. */
  readonly setup: number;
  /** The height of the instrument of that setup; null for the benchmark. */
  readonly instrument: Inches | null;
  /** Height of instrument less reading. */
  readonly reduced: Inches;
  readonly correction: Inches;
  /** Reduced and corrected. */
  readonly height: Inches;
}

/** How a run of levels closed on a point of known height; inches. */
export interface LevelClosing {
  readonly known: Inches;
  readonly reached: Inches;
  /** Reached less known. */
  readonly misclosure: Inches;
  /** The most that it may be, either way; null where nobody has said. */
  readonly allowable: Inches | null;
  /** What the misclosure was spread over; `not` where it is more than allowable. */
  readonly spread: 'setups' | 'distances' | 'not';
}

/** Level notes worked out. */
export interface LevelBook {
  readonly points: readonly LevelledPoint[];
  /** Of the setups that have a foresight: the sums, and the last reduced height less the first. */
  readonly backsights: Inches;
  readonly foresights: Inches;
  readonly rise: Inches;
  /** Null where the last row is not a foresight on a point of known height. */
  readonly closing: LevelClosing | null;
}

type Reduced = Omit<LevelledPoint, 'correction' | 'height'>;

const reduce = (rows: readonly LevelRow[]): Reduced[] => {
  let [setup, instrument] = [0, inches(0)];
  return rows.map((row) => {
    const reading = row.foresight ?? row.intermediate;
    const reduced = reading === null ? (row.known ?? inches(0)) : inches(instrument - reading);
    const point = {
      point: row.point,
      setup,
      instrument: reading === null ? null : instrument,
      reduced,
    };
    if (row.backsight !== null) [setup, instrument] = [setup + 1, inches(reduced + row.backsight)];
    return point;
  });
};

const closingOf = (
  rows: readonly LevelRow[],
  points: readonly Reduced[],
  allowable: Inches | null,
): LevelClosing | null => {
  const [first, last] = [rows.at(0), rows.at(-1)];
  if (first === undefined || last === undefined || last.foresight === null) return null;
  if (last.backsight !== null) return null;
  const known = last.known ?? (last.point === first.point ? first.known : null);
  const reached = points.at(-1)?.reduced;
  if (known === null || reached === undefined) return null;
  const misclosure = inches(reached - known);
  const measured = rows.every(({ foresight, distance }) => foresight === null || distance !== null);
  const long = rows.some(({ foresight, distance }) => foresight !== null && (distance ?? 0) > 0);
  const over = measured && long ? 'distances' : 'setups';
  const spread = allowable !== null && Math.abs(misclosure) > allowable ? 'not' : over;
  return { known, reached, misclosure, allowable, spread };
};

/** For each setup, counted from 1, its share of the misclosure with those before it; 1 at the end. */
const sharesOf = (rows: readonly LevelRow[], spread: LevelClosing['spread']): number[] => {
  const turns = rows.filter(({ foresight }) => foresight !== null);
  const lengths = turns.map(({ distance }) => (spread === 'setups' ? 1 : (distance ?? 0)));
  const whole = lengths.reduce((total, length) => total + length, 0);
  let run = 0;
  return lengths.map((length) => (run += length) / whole);
};

/**
 * Works out level notes by the height of the instrument. Where they close on a point of known
 * height (a second benchmark, or the first again by its name) within what is allowed, the
 * misclosure is spread over the setups by their number, or by distance where every setup has one;
 * all that was read from a setup gets the correction of its foresight. A larger one is not spread:
 * the run has to be levelled again. Bad notes give one line that names the row.
 */
export const levelBook = (
  rows: readonly LevelRow[],
  allowable: Inches | null,
): Parsed<LevelBook> => {
  const fault = levelFault(rows);
  if (fault !== null) return unread(fault);
  const reduced = reduce(rows);
  const closing = closingOf(rows, reduced, allowable);
  const spread = closing?.spread ?? 'not';
  const shares = spread === 'not' ? [] : sharesOf(rows, spread);
  const points = reduced.map((point) => {
    const correction = inches(0 - (closing?.misclosure ?? 0) * (shares[point.setup - 1] ?? 0));
    return { ...point, correction, height: inches(point.reduced + correction) };
  });
  const turns = rows.flatMap(({ foresight }, n) => (foresight === null ? [] : [n]));
  const stands = [0, ...turns.slice(0, -1)].slice(0, turns.length);
  const last = reduced[turns.at(-1) ?? 0]?.reduced ?? 0;
  return read({
    points,
    backsights: sum(stands.flatMap((n) => rows[n]?.backsight ?? [])),
    foresights: sum(turns.flatMap((n) => rows[n]?.foresight ?? [])),
    rise: inches(last - (reduced[0]?.reduced ?? 0)),
    closing,
  });
};
