import { createStore } from 'zustand/vanilla';
import { eased } from '../engine/survey/eased.ts';
import { redrawn } from '../engine/survey/redrawn.ts';
import { surveyed } from '../engine/survey/surveyed.ts';
import type { Surveyed } from '../engine/survey/surveyed.ts';
import type { Site } from '../site/site.ts';
import * as versions from './history.ts';

/**
 * The document with its history, and the only ways to change it. What everyone looks at and edits is
 * the site as it stands: its marks where what was observed puts them. What is kept is the document
 * as it was drawn.
 */
export interface SiteState {
  /** Sites as they stand. */
  readonly history: versions.History;
  /** The document behind a site of the history; a site that was never of it is its own document. */
  readonly drawn: (site: Site) => Site;
  readonly preview: (site: Site) => void;
  readonly cancel: () => void;
  readonly commit: (site: Site, label: string) => void;
  /** Puts another document on the pad; undo brings the old one back. */
  readonly load: (drawn: Site, label: string) => void;
  readonly undo: () => void;
  readonly redo: () => void;
}

/** The store of one document. It starts with `first`; undo does not go behind it. */
export const createSiteStore = (first: Site, label = 'New site') => {
  // versions share what did not change, and the documents behind them go when they do
  const behind = new WeakMap<Site, Site>();
  let last: Surveyed | null = null;
  const stand = (drawn: Site): Site => {
    last = surveyed(drawn, last);
    behind.set(last.site, drawn);
    return last.site;
  };
  const drawnOf = (site: Site): Site => behind.get(site) ?? site;
  const documentOf = (stood: Site, edited: Site): Site => {
    const before = { drawn: drawnOf(stood), stood };
    return eased(before, redrawn(before, edited));
  };
  const edit = ({ present }: versions.History, edited: Site): Site =>
    edited === present.site ? edited : stand(documentOf(present.site, edited));
  return createStore<SiteState>()((set) => {
    const step = (change: (history: versions.History) => versions.History): void =>
      set((state) => {
        const history = change(state.history);
        // the same state wakes no subscriber
        return history === state.history ? state : { history };
      });
    return {
      history: versions.begin(stand(first), label),
      drawn: drawnOf,
      preview: (next) => step((history) => versions.preview(history, edit(history, next))),
      cancel: () => step(versions.cancel),
      commit: (next, said) =>
        step((history) => versions.commit(history, edit(history, next), said)),
      load: (drawn, said) => step((history) => versions.commit(history, stand(drawn), said)),
      undo: () => step(versions.undo),
      redo: () => step(versions.redo),
    };
  });
};

export type SiteStore = ReturnType<typeof createSiteStore>;
