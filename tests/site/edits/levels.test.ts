import { describe, expect, it } from 'vitest';
import { levelsOf } from '../../../src/engine/ground/levelsOf.ts';
import { addLevelNote, type LevelReadings } from '../../../src/site/edits/addLevelNote.ts';
import { addShots } from '../../../src/site/edits/addShots.ts';
import { changeLevelNote } from '../../../src/site/edits/changeLevelNote.ts';
import { removeLevelNotes } from '../../../src/site/edits/removeLevelNotes.ts';
import { setLevelAllowable } from '../../../src/site/edits/setLevelAllowable.ts';
import { takeHeights } from '../../../src/site/edits/takeHeights.ts';
import { openSite } from '../../../src/site/openSite.ts';
import { saveSite } from '../../../src/site/saveSite.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { sampleSite } from '../sampleSite.ts';

const blank: LevelReadings = {
  point: '',
  backsight: null,
  intermediate: null,
  foresight: null,
  known: null,
  distance: null,
};
const note = (point: string, fields: Partial<LevelReadings> = {}): LevelReadings => ({
  ...blank,
  point,
  ...fields,
});

/** A run from a benchmark at 100 in over two setups and back, that closes an inch high. */
const run = [
  note('BM', { backsight: inches(50), known: inches(100) }),
  note('P1', { intermediate: inches(40) }),
  note('T1', { foresight: inches(30), backsight: inches(20) }),
  note('P2', { intermediate: inches(10) }),
  note('BM', { foresight: inches(39) }),
].reduce((site: Site, readings) => addLevelNote(site, readings), sampleSite);

const points = (site: Site): string[] => levelsOf(site).rows.map(({ point }) => point);

describe('level notes', () => {
  it('[S35] stand in the order in which they were added, also between two', () => {
    expect(points(run)).toEqual(['BM', 'P1', 'T1', 'P2', 'BM']);
    const [, second] = levelsOf(run).rows;
    const between = addLevelNote(run, note('P1b'), second?.id ?? null);
    expect(points(between)).toEqual(['BM', 'P1', 'P1b', 'T1', 'P2', 'BM']);
    expect(openSite(saveSite(between))).toEqual({ ok: true, value: between });
  });

  it('[S35] one that is changed or taken out leaves the others', () => {
    const [, second] = levelsOf(run).rows;
    const id = second?.id ?? 'level:';
    const changed = changeLevelNote(run, id, { intermediate: inches(41) });
    expect(levelsOf(changed).rows[1]?.intermediate).toBe(41);
    expect(changeLevelNote(run, id, { intermediate: inches(40) })).toBe(run);
    expect(points(removeLevelNotes(run, [id]))).toEqual(['BM', 'T1', 'P2', 'BM']);
    expect(removeLevelNotes(run, ['level:99'])).toBe(run);
    expect(() => changeLevelNote(run, 'level:99', {})).toThrow(/expected a note of this site/);
    expect(() => changeLevelNote(run, id, { foresight: inches(-1) })).toThrow(/foresight/);
  });

  it('[R9] are worked out in their order, the misclosure spread over the two setups', () => {
    const { book } = levelsOf(setLevelAllowable(run, inches(1)));
    if (!book.ok) throw new Error(book.reason);
    // BM 100 + 50 = 150; P1 150 - 40 = 110; T1 120; 120 + 20 = 140; P2 130; BM 101: an inch high,
    // half of it in each setup
    expect(book.value.closing).toMatchObject({ misclosure: 1, spread: 'setups' });
    expect(book.value.points.map(({ height }) => height)).toEqual([100, 109.5, 119.5, 129, 100]);
    const strict = levelsOf(setLevelAllowable(run, inches(0.5))).book;
    if (!strict.ok) throw new Error(strict.reason);
    expect(strict.value.closing).toMatchObject({ misclosure: 1, spread: 'not' });
  });

  it('[S36] give their heights to the grade shots of their names', () => {
    const at = (label: string) => ({ x: 1, y: 2, z: inches(0), label });
    const shot = addShots(run, [at('P1'), at(' P2 '), at(''), at('P9')]);
    const own = (site: Site) => Object.values(site.shots).slice(-4);
    const taken = takeHeights(shot, [
      { point: 'P1', height: inches(109.5) },
      { point: 'P2', height: inches(129) },
      { point: '', height: inches(7) },
    ]);
    expect(own(taken).map(({ z }) => z)).toEqual([109.5, 129, 0, 0]);
    expect(takeHeights(shot, [])).toBe(shot);
  });
});
