import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { surveyed } from '../../../src/engine/survey/surveyed.ts';
import { distance } from '../../../src/geometry/distance.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { addFix } from '../../../src/site/edits/addFix.ts';
import { addMark } from '../../../src/site/edits/addMark.ts';
import { addObservation } from '../../../src/site/edits/addObservation.ts';
import { moveMark } from '../../../src/site/edits/moveMark.ts';
import { moveMarks } from '../../../src/site/edits/moveMarks.ts';
import { setTape } from '../../../src/site/edits/setTape.ts';
import type { MarkId } from '../../../src/site/ids.ts';
import type { Site } from '../../../src/site/site.ts';
import { current } from '../../../src/store/history.ts';
import { createSiteStore } from '../../../src/store/siteStore.ts';
import { inches } from '../../../src/units/inches.ts';
import { radians } from '../../../src/units/radians.ts';
import { namedSite } from '../../store/namedSite.ts';

const origin = { latitude: 40, longitude: -90 };
const walk = (site: Site, x: number, y: number, accuracy = 80): Site =>
  addFix(site, { at: { x, y }, accuracy: inches(accuracy), label: 'Walk', origin });

const edited = (from: Site, edit: (site: Site) => Site): Site => {
  const store = createSiteStore(from);
  store.getState().commit(edit(current(store.getState().history)), 'Edit');
  return current(store.getState().history);
};

/** A house that is taped all round and over both diagonals: held. */
const house = (() => {
  const drawn = addFeature(namedSite('House'), { kind: 'building', label: 'House' }, [
    { x: 0, y: 0 },
    { x: 360, y: 0 },
    { x: 360, y: 240 },
    { x: 0, y: 240 },
  ]);
  const marks = Object.keys(drawn.marks) as MarkId[];
  return marks.reduce(
    (site, a, n) =>
      marks
        .slice(n + 1)
        .reduce(
          (so, b) => setTape(so, a, b, inches(distance(drawn.marks[a]!, drawn.marks[b]!))),
          site,
        ),
    drawn,
  );
})();

const surveyOf = (site: Site) => layOutSite(surveyed(site, null).site).survey;

describe('what satellites found', () => {
  it('[Y5] leaves a mark where a hand puts it', () => {
    const dropped = walk(namedSite('Yard'), 0, 0);
    const moved = edited(dropped, (was) => moveMark(was, 'mark:1', { x: 600, y: 0 }));
    expect(moved.marks['mark:1']).toMatchObject({ x: 600, y: 0 });
    const nudged = edited(dropped, (was) => moveMarks(was, ['mark:1'], { x: 0, y: 1 }));
    expect(nudged.marks['mark:1']).toMatchObject({ x: 0, y: 1 });
    expect(nudged.observations).toEqual(dropped.observations);
  });

  it('[Y5] yields to a tape, the rougher mark of two by more', () => {
    // 100 in apart as found, 110 in as taped: sigmas of 40 and 80 share the 10 in as 1 to 4
    const two = walk(walk(namedSite('Yard'), 0, 0, 40), 100, 0, 80);
    const { site } = surveyed(setTape(two, 'mark:1', 'mark:2', inches(110)), null);
    expect(distance(site.marks['mark:1']!, site.marks['mark:2']!)).toBeCloseTo(110, 3);
    expect(site.marks['mark:1']?.x).toBeCloseTo(-2, 2);
    expect(site.marks['mark:2']?.x).toBeCloseTo(108, 2);
  });

  it('[Y5] leaves a yard that is held as held as it was', () => {
    expect(surveyOf(house).stands).toBe('held');
    const walked = walk(walk(house, -400, 300), 800, 300);
    const [before, after] = [surveyOf(house), surveyOf(walked)];
    expect([after.stands, after.loose, after.spare]).toEqual(['held', [], before.spare]);
    expect(surveyOf(walk(namedSite('Yard'), 0, 0)).stands).toBe('sketched');
  });

  it('[Y5] holds no mark: one that only it tells of is loose once it is taped to one alone', () => {
    const walked = walk(house, -400, 300);
    const [pin] = (Object.keys(walked.marks) as MarkId[]).filter((id) => !(id in house.marks));
    const [corner] = Object.keys(house.marks) as MarkId[];
    const tied = setTape(walked, pin ?? 'mark:0', corner ?? 'mark:0', inches(500));
    expect(surveyOf(tied).loose).toEqual([pin]);
  });

  it('[Y5] bends nothing that a reading tells, and leaves the marks at rest', () => {
    const two = walk(addMark(namedSite('Yard'), { x: 0, y: 0 }), 390, 100);
    const taped = setTape(two, 'mark:1', 'mark:2', inches(400));
    const [from, to] = ['mark:1', 'mark:2'] as const;
    const seen = {
      kind: 'bearing',
      from,
      to,
      bearing: radians(0),
      trust: null,
      label: '',
    } as const;
    const walked = addObservation(taped, seen);
    const { site } = surveyed(walked, null);
    const [a, b] = [site.marks['mark:1']!, site.marks['mark:2']!];
    expect(b.y - a.y).toBeCloseTo(0, 4);
    expect(surveyOf(walked).settled).toBe(true);
  });
});
