import { describe, expect, it } from 'vitest';
import { distance } from '../../../src/geometry/distance.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { addMark } from '../../../src/site/edits/addMark.ts';
import { moveMark } from '../../../src/site/edits/moveMark.ts';
import { setTape } from '../../../src/site/edits/setTape.ts';
import type { MarkId } from '../../../src/site/ids.ts';
import type { Site } from '../../../src/site/site.ts';
import { current } from '../../../src/store/history.ts';
import { createSiteStore } from '../../../src/store/siteStore.ts';
import { inches } from '../../../src/units/inches.ts';
import { namedSite } from '../../store/namedSite.ts';

const corners: readonly MarkId[] = ['mark:1', 'mark:2', 'mark:3', 'mark:4'];

/** A house, and a pin 20 ft east of its corner that is taped to it. */
const house = addFeature(namedSite('House'), { kind: 'building', label: 'House' }, [
  { x: 0, y: 0 },
  { x: 360, y: 0 },
  { x: 360, y: 240 },
  { x: 0, y: 240 },
]);
const pinned = setTape(addMark(house, { x: 600, y: 0 }, 'pin'), 'mark:2', 'mark:5', inches(240));

const edited = (from: Site, edit: (site: Site) => Site): Site => {
  const store = createSiteStore(from);
  store.getState().commit(edit(store.getState().history.present.site), 'Edit');
  return current(store.getState().history);
};

describe('a mark that is put elsewhere', () => {
  it('[V20] goes where its tape lets it, and takes no house along', () => {
    const site = edited(pinned, (was) => moveMark(was, 'mark:5', { x: 360, y: 400 }));
    for (const id of corners) {
      expect(distance(site.marks[id]!, pinned.marks[id]!)).toBeLessThan(1e-4);
    }
    expect(site.marks['mark:5']?.x).toBeCloseTo(360, 3);
    expect(site.marks['mark:5']?.y).toBeCloseTo(240, 3);
  });

  it('[V20] held by three tapes it goes back, and nothing else moves', () => {
    const held = ([1, 3, 4] as const).reduce(
      (so, n) =>
        setTape(
          so,
          `mark:${n}`,
          'mark:5',
          inches(distance(so.marks[`mark:${n}`]!, { x: 600, y: 0 })),
        ),
      pinned,
    );
    const site = edited(held, (was) => moveMark(was, 'mark:5', { x: 700, y: 90 }));
    for (const id of corners) {
      expect(distance(site.marks[id]!, held.marks[id]!)).toBeLessThan(1e-3);
    }
    expect(distance(site.marks['mark:5']!, { x: 600, y: 0 })).toBeLessThan(1e-2);
  });

  it('[V20] a house that is moved leaves what is taped to it on its tape', () => {
    const site = edited(pinned, (was) => moveMark(was, 'mark:2', { x: 360, y: -48 }));
    expect(distance(site.marks['mark:5']!, pinned.marks['mark:5']!)).toBeLessThan(1e-4);
    expect(distance(site.marks['mark:2']!, site.marks['mark:5']!)).toBeCloseTo(240, 3);
  });
});
