import { createStore } from 'zustand/vanilla';
import type { Site } from '../site/site.ts';
import * as versions from './history.ts';

/** The document with its history, and the only ways to change it. */
export interface SiteState {
  readonly history: versions.History;
  readonly preview: (site: Site) => void;
  readonly cancel: () => void;
  readonly commit: (site: Site, label: string) => void;
  /** Puts another document on the pad; undo brings the old one back. */
  readonly load: (site: Site, label: string) => void;
  readonly undo: () => void;
  readonly redo: () => void;
}

/** The store of one document. It starts with `site`; undo does not go behind it. */
export const createSiteStore = (site: Site, label = 'New site') =>
  createStore<SiteState>()((set) => {
    const step = (change: (history: versions.History) => versions.History): void =>
      set((state) => {
        const history = change(state.history);
        // the same state wakes no subscriber
        return history === state.history ? state : { history };
      });
    const keep = (next: Site, said: string): void =>
      step((history) => versions.commit(history, next, said));
    return {
      history: versions.begin(site, label),
      preview: (next) => step((history) => versions.preview(history, next)),
      cancel: () => step(versions.cancel),
      commit: keep,
      load: keep,
      undo: () => step(versions.undo),
      redo: () => step(versions.redo),
    };
  });

export type SiteStore = ReturnType<typeof createSiteStore>;
