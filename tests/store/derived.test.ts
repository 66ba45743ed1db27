import { unsurveyed } from '../../src/engine/survey/survey.ts';
import { describe, expect, it } from 'vitest';
import type { Laying } from '../../src/engine/layOutFrom.ts';
import { layOutFrom } from '../../src/engine/layOutFrom.ts';
import type { Layout } from '../../src/engine/layout.ts';
import { addUnderlay } from '../../src/site/edits/addUnderlay.ts';
import { changeUnderlay } from '../../src/site/edits/changeUnderlay.ts';
import { moveMark } from '../../src/site/edits/moveMark.ts';
import type { LineId, MarkId } from '../../src/site/ids.ts';
import { commit, begin, preview, undo } from '../../src/store/history.ts';
import { rememberLayouts } from '../../src/store/derived.ts';
import { bare, fence } from '../engine/plainYard.ts';
import { namedSite } from './namedSite.ts';

const empty: Layout = {
  lines: {},
  posts: new Map(),
  gates: {},
  ground: null,
  survey: unsurveyed,
  flags: [],
};

const laying = (): Laying => ({ layout: { ...empty }, pieces: new Map() });

describe('derived', () => {
  it('[H18] a site that differs in nothing but the pictures under it has the very same layout', () => {
    let asked = 0;
    const layoutOf = rememberLayouts((site, before) => {
      asked += 1;
      return layOutFrom(site, before);
    });
    const site = fence(bare, [
      [0, 0],
      [600, 0],
      [600, 400],
    ]);
    const laid = addUnderlay(site, {
      label: '',
      picture: `picture:${'0'.repeat(64)}`,
      file: 'a.png',
      width: 4,
      height: 3,
      ties: [
        { u: 0, v: 0, x: 0, y: 0 },
        { u: 4, v: 3, x: 4, y: 3 },
      ],
    });
    const layout = layoutOf(site);
    expect(layoutOf(laid)).toBe(layout);
    expect(layoutOf(changeUnderlay(laid, 'underlay:1', { shows: 0.5 }))).toBe(layout);
    // as it stands: the map of marks is made anew, the marks are the same
    expect(layoutOf({ ...laid, marks: { ...laid.marks } })).toBe(layout);
    expect(asked).toBe(1);
    expect(layoutOf({ ...laid, job: { ...laid.job } })).not.toBe(layout);
    expect(asked).toBe(2);
  });

  it('[H6] lays the present and the draft out once each', () => {
    const asked: string[] = [];
    const layoutOf = rememberLayouts((site) => {
      asked.push(site.job.name);
      return laying();
    });
    const [present, draft, next] = [namedSite('present'), namedSite('draft'), namedSite('next')];
    const first = layoutOf(present);
    layoutOf(draft);
    expect(layoutOf(present)).toBe(first);
    layoutOf(draft);
    expect(asked).toEqual(['present', 'draft']);
    layoutOf(next);
    layoutOf(draft);
    expect(asked).toEqual(['present', 'draft', 'next']);
    expect(layoutOf(present)).not.toBe(first);
  });

  it('[H6] a document with the same content is another document', () => {
    let count = 0;
    const layoutOf = rememberLayouts(() => {
      count += 1;
      return laying();
    });
    layoutOf(namedSite('twin'));
    layoutOf(namedSite('twin'));
    expect(count).toBe(2);
  });

  it('[H15] lays each document out from the one that was laid out before, and from another', () => {
    const from: (string | null)[][] = [];
    const names = new Map<Laying | null, string | null>([[null, null]]);
    const layoutOf = rememberLayouts((site, ...before) => {
      from.push(before.map((one) => names.get(one) ?? null));
      const made = laying();
      names.set(made, site.job.name);
      return made;
    });
    const present = namedSite('present');
    layoutOf(present);
    layoutOf(namedSite('draft'));
    layoutOf(present);
    layoutOf(namedSite('further'));
    layoutOf(present);
    layoutOf(namedSite('last'));
    expect(from).toEqual([
      [null, null],
      ['present', null],
      ['draft', 'present'],
      ['further', 'present'],
    ]);
  });

  it('[H15] a draft, the next one, and undo keep every run that they do not touch', () => {
    const site = fence(bare, [
      [0, 0],
      [600, 0],
      [600, 600],
      [1200, 600],
    ]);
    const mark = Object.values(site.lines['line:1']?.path ?? {})[3]?.mark as MarkId;
    const layoutOf = rememberLayouts(layOutFrom);
    const runs = (of: typeof site) => layoutOf(of).lines['line:1' as LineId]?.runs ?? [];
    const started = begin(site, 'New site');
    const first = runs(started.present.site);
    const drafts = [1300, 1400].map((x) => moveMark(site, mark, { x, y: 600 }));
    for (const draft of drafts) {
      const shown = preview(started, draft).draft ?? site;
      expect(runs(shown).map((run, n) => run === first[n])).toEqual([true, true, false]);
    }
    const moved = commit(started, drafts[1] ?? site, 'Move mark');
    expect(runs(undo(moved).present.site).map((run, n) => run === first[n])).toEqual([
      true,
      true,
      false,
    ]);
  });
});
