import { describe, expect, it } from 'vitest';
import { current } from '../../src/store/history.ts';
import { createSiteStore } from '../../src/store/siteStore.ts';
import { namedSite } from './namedSite.ts';

describe('siteStore', () => {
  it('[H5] a loaded document is undone like any edit', () => {
    const [own, other] = [namedSite('own'), namedSite('other')];
    const store = createSiteStore(own);
    store.getState().load(other, 'Open other');
    expect(store.getState().history.present).toEqual({ site: other, label: 'Open other' });
    store.getState().undo();
    expect(store.getState().history.present.site).toBe(own);
    store.getState().redo();
    expect(store.getState().history.present.site).toBe(other);
  });

  it('[H3] wakes nobody when nothing changes', () => {
    const site = namedSite('own');
    const store = createSiteStore(site);
    let woken = 0;
    store.subscribe(() => {
      woken += 1;
    });
    const { commit, preview, cancel, undo, redo } = store.getState();
    commit(site, 'Edit');
    preview(site);
    cancel();
    undo();
    redo();
    expect(woken).toBe(0);
    preview(namedSite('draft'));
    expect(woken).toBe(1);
  });

  it('[H2] a gesture is one step of the history, however many drafts it showed', () => {
    const first = namedSite('first');
    const store = createSiteStore(first);
    for (const name of ['one', 'two', 'three']) store.getState().preview(namedSite(name));
    expect(current(store.getState().history).job.name).toBe('three');
    store.getState().commit(namedSite('end'), 'Move mark');
    expect(store.getState().history.past).toHaveLength(1);
    store.getState().undo();
    expect(current(store.getState().history)).toBe(first);
  });
});
