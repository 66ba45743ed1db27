import { describe, expect, it } from 'vitest';
import { createSiteStore } from '../../src/store/siteStore.ts';
import { redoLabel, undoLabel } from '../../src/store/onPad.ts';
import { namedSite } from './namedSite.ts';

const named = (store: ReturnType<typeof createSiteStore>) =>
  store.getState().history.present.site.job.name;

describe('the job on the pad', () => {
  it('[H40] a file that is opened is a job of its own; undo takes it off the pad and redo puts it back', () => {
    const store = createSiteStore(namedSite('own'));
    const { commit, load, undo, redo } = store.getState();
    commit(namedSite('own 2'), 'Edit');
    const { job } = store.getState().pad;
    load(namedSite('file'), 'Open file');
    commit(namedSite('file 2'), 'Edit file');
    const opened = store.getState().pad.job;
    expect(opened).not.toBe(job);
    undo();
    expect([named(store), store.getState().pad.job]).toEqual(['file', opened]);
    expect(undoLabel(store.getState().pad)).toBe('Open file');
    undo();
    expect([named(store), store.getState().pad.job]).toEqual(['own 2', job]);
    expect(undoLabel(store.getState().pad)).toBe('Edit');
    expect(redoLabel(store.getState().pad)).toBe('Open file');
    undo();
    expect(named(store)).toBe('own');
    expect(undoLabel(store.getState().pad)).toBeNull();
    for (const name of ['own 2', 'file', 'file 2']) {
      redo();
      expect(named(store)).toBe(name);
    }
    expect(redoLabel(store.getState().pad)).toBeNull();
  });

  it('[H40] what was undone in a job before another was begun over it is there again once that is put away', () => {
    const store = createSiteStore(namedSite('a'));
    const { commit, load, undo, redo } = store.getState();
    commit(namedSite('b'), 'Edit');
    undo();
    load(namedSite('file'), 'Open file');
    undo();
    redo();
    expect(named(store)).toBe('file');
    undo();
    commit(namedSite('c'), 'Other edit');
    redo();
    expect(named(store)).toBe('c');
    expect(redoLabel(store.getState().pad)).toBeNull();
  });

  it('[H40] three jobs over each other come off and back one by one', () => {
    const store = createSiteStore(namedSite('1'));
    const { load, undo, redo } = store.getState();
    load(namedSite('2'), 'Open 2');
    load(namedSite('3'), 'Open 3');
    undo();
    undo();
    expect(named(store)).toBe('1');
    redo();
    redo();
    expect(named(store)).toBe('3');
  });
});
