import type { Site } from '../site/site.ts';

/** A whole document and the edit that led to it, as undo shows it. */
export interface Version {
  readonly site: Site;
  readonly label: string;
}

/**
 * Every version of the document, whole. They share all that did not change, so a version costs
 * what its edit wrote. Nothing is ever dropped from the past.
 */
export interface History {
  /** Oldest first. */
  readonly past: readonly Version[];
  readonly present: Version;
  /** What a running gesture shows instead of the present; null between gestures. */
  readonly draft: Site | null;
  /** What undo took back, the next to be done again first. */
  readonly future: readonly Version[];
}

/** A history that starts with a document; undo does not go behind it. */
export const begin = (site: Site, label: string): History => ({
  past: [],
  present: { site, label },
  draft: null,
  future: [],
});

/** The document to be shown: the draft while there is one, else the present. */
export const current = (history: History): Site => history.draft ?? history.present.site;

/** Shows a document without keeping it. The same history when it is shown already. */
export const preview = (history: History, site: Site): History => {
  if (site === current(history)) return history;
  return { ...history, draft: site === history.present.site ? null : site };
};

/** Drops the draft. The same history when there is none. */
export const cancel = (history: History): History =>
  history.draft === null ? history : { ...history, draft: null };

/**
 * Keeps a document as the new present and forgets what could be done again. The very document
 * that is the present already only ends the draft.
 */
export const commit = (history: History, site: Site, label: string): History => {
  if (site === history.present.site) return cancel(history);
  return {
    past: [...history.past, history.present],
    present: { site, label },
    draft: null,
    future: [],
  };
};

/** Takes the last edit back and drops the draft; with no past, only the draft. */
export const undo = (history: History): History => {
  const last = history.past.at(-1);
  if (last === undefined) return cancel(history);
  return {
    past: history.past.slice(0, -1),
    present: last,
    draft: null,
    future: [history.present, ...history.future],
  };
};

/** Does again what undo took back last and drops the draft; with no future, only the draft. */
export const redo = (history: History): History => {
  const [next, ...future] = history.future;
  if (next === undefined) return cancel(history);
  return { past: [...history.past, history.present], present: next, draft: null, future };
};
