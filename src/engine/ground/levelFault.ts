import type { LevelRow } from './levelRow.ts';
import { phrase } from '../../phrases/phrase.ts';

const named = (rows: readonly LevelRow[], n: number): string =>
  phrase`row ${n + 1} (${rows[n]?.point ?? ''})`;

const readingFault = (row: LevelRow): string | null => {
  const readings = [
    [phrase`a backsight`, row.backsight],
    [phrase`an intermediate sight`, row.intermediate],
    [phrase`a foresight`, row.foresight],
  ] as const;
  const bad = readings.find(([, value]) => value !== null && !(value >= 0 && value < Infinity));
  if (bad !== undefined)
    return phrase`has ${bad[0]} of ${bad[1] ?? ''} in: expected a rod reading, 0 or more`;
  if (readings.every(([, value]) => value === null)) {
    return phrase`has no reading: expected a backsight, an intermediate sight or a foresight`;
  }
  return null;
};

const firstFault = ({ known, backsight, intermediate, foresight }: LevelRow): string | null => {
  if (known === null || !Number.isFinite(known)) {
    return phrase`starts from a height of ${known ?? phrase`nothing`}: expected the known height of a benchmark`;
  }
  if (backsight === null) return phrase`has no backsight: expected one on the benchmark`;
  if (intermediate === null && foresight === null) return null;
  return phrase`has more than a backsight: expected nothing else on the first row`;
};

const laterFault = ({ known, backsight, intermediate, foresight }: LevelRow): string | null => {
  if (intermediate !== null && (backsight !== null || foresight !== null)) {
    return phrase`has an intermediate sight and another: expected that alone, or a foresight and a backsight`;
  }
  if (backsight !== null && foresight === null) {
    return phrase`has a backsight without a foresight: expected both on a turning point`;
  }
  if (known !== null && (!Number.isFinite(known) || foresight === null || backsight !== null)) {
    return phrase`has a known height of ${known} in: expected that on the first row and on the last foresight`;
  }
  return null;
};

/**
 * What is wrong with level notes, in one line that names the row, or null. The first row has a
 * known height and a backsight, a turning point a foresight and a backsight, and after a foresight
 * without a backsight there is nothing more.
 */
export const levelFault = (rows: readonly LevelRow[]): string | null => {
  if (rows.length === 0)
    return phrase`the level notes have no row: expected a backsight on a benchmark`;
  for (const [n, row] of rows.entries()) {
    const before = rows[n - 1];
    if (n > 1 && before?.foresight != null && before.backsight === null) {
      return phrase`${named(rows, n)} follows the foresight of row ${n}: expected a backsight there first`;
    }
    const fault = readingFault(row) ?? (n === 0 ? firstFault(row) : laterFault(row));
    if (fault !== null) return phrase`${named(rows, n)} ${fault}`;
    const { distance } = row;
    if (distance !== null && !(distance >= 0 && distance < Infinity)) {
      return phrase`${named(rows, n)} has a distance of ${distance}: expected 0 or more`;
    }
  }
  return null;
};
