import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as versions from '../../src/store/history.ts';
import type { History } from '../../src/store/history.ts';
import { namedSite } from './namedSite.ts';

const step = fc.oneof(
  fc.string().map((name) => ({ do: 'commit', name }) as const),
  fc.string().map((name) => ({ do: 'preview', name }) as const),
  fc.constantFrom({ do: 'undo' } as const, { do: 'redo' } as const, { do: 'cancel' } as const),
);

const moves = { undo: versions.undo, redo: versions.redo, cancel: versions.cancel };

const times = (count: number, change: (history: History) => History, from: History): History => {
  let history = from;
  for (let n = 0; n < count; n += 1) history = change(history);
  return history;
};

describe('history', () => {
  it('[H1] undoing every commit gives the first document, redoing them the last, by identity', () => {
    fc.assert(
      fc.property(fc.array(fc.string(), { maxLength: 60 }), (names) => {
        const first = namedSite('first');
        const sites = names.map(namedSite);
        const end = sites.reduce(
          (history, site) => versions.commit(history, site, 'Edit'),
          versions.begin(first, 'New site'),
        );
        const back = times(names.length, versions.undo, end);
        expect(back.present.site).toBe(first);
        expect(back.past).toEqual([]);
        const again = times(names.length, versions.redo, back);
        expect(again.present.site).toBe(sites.at(-1) ?? first);
        expect(again.past.map(({ site }) => site)).toEqual([first, ...sites].slice(0, -1));
      }),
    );
  });

  it('[H1] two thousand commits can all be undone', () => {
    const first = namedSite('first');
    let history = versions.begin(first, 'New site');
    for (let n = 0; n < 2_000; n += 1) {
      history = versions.commit(history, namedSite(`${n}`), 'Edit');
    }
    expect(times(2_000, versions.undo, history).present.site).toBe(first);
  });

  it('[H2] whatever is done, undo and redo keep every version in its order', () => {
    fc.assert(
      fc.property(fc.array(step), (steps) => {
        let history = versions.begin(namedSite('first'), 'New site');
        for (const one of steps) {
          const before = history;
          if (one.do === 'commit') history = versions.commit(history, namedSite(one.name), 'Edit');
          else if (one.do === 'preview') history = versions.preview(history, namedSite(one.name));
          else history = moves[one.do](history);
          if (one.do !== 'preview') expect(history.draft).toBeNull();
          if (one.do === 'commit') continue;
          const line = ({ past, present, future }: History) => [...past, present, ...future];
          expect(line(history)).toEqual(line(before));
        }
      }),
    );
  });

  it('[H2] a draft is what is shown until it is dropped', () => {
    const [kept, shown] = [namedSite('kept'), namedSite('shown')];
    const drafted = versions.preview(versions.begin(kept, 'New site'), shown);
    expect(versions.current(drafted)).toBe(shown);
    expect(versions.current(versions.cancel(drafted))).toBe(kept);
    expect(versions.preview(drafted, kept).draft).toBeNull();
  });

  it('[H3] committing the present again is no step of the history', () => {
    const site = namedSite('only');
    const history = versions.begin(site, 'New site');
    expect(versions.commit(history, site, 'Edit')).toBe(history);
    const drafted = versions.preview(history, namedSite('draft'));
    expect(versions.commit(drafted, site, 'Edit')).toEqual(history);
  });

  it('[H4] a commit after an undo forgets what could be done again', () => {
    const history = versions.commit(versions.begin(namedSite('a'), ''), namedSite('b'), 'Edit');
    const other = versions.commit(versions.undo(history), namedSite('c'), 'Other edit');
    expect(other.future).toEqual([]);
    expect(versions.redo(other)).toBe(other);
    expect(other.past.map(({ site }) => site.job.name)).toEqual(['a']);
  });
});
