import { createStore } from 'zustand/vanilla';
import { eased } from '../engine/survey/eased.ts';
import { redrawn } from '../engine/survey/redrawn.ts';
import { surveyed } from '../engine/survey/surveyed.ts';
import type { Surveyed } from '../engine/survey/surveyed.ts';
import type { Site } from '../site/site.ts';
import * as versions from './history.ts';
import { freshJobId, type JobId } from './jobId.ts';
import * as pads from './onPad.ts';
import type { OnPad } from './onPad.ts';
import { phrase } from '../phrases/phrase.ts';

/** A version whose document is had when it is looked at. RangeError where it cannot be read. */
export interface LazyVersion {
  readonly label: string;
  readonly drawn: () => Site;
}

/** A job with its history, from wherever it was kept. */
export interface JobAgain {
  readonly job: JobId;
  /** Oldest first. */
  readonly past: readonly LazyVersion[];
  readonly present: { readonly drawn: Site; readonly label: string };
  /** The next to be done again first. */
  readonly future: readonly LazyVersion[];
}

/**
 * The job on the pad with its history, and the only ways to change it. What everyone looks at and
 * edits is the site as it stands: its marks where what was observed puts them. What is kept is the
 * document as it was drawn.
 */
export interface SiteState {
  readonly pad: OnPad;
  /** The history of the job on the pad: sites as they stand. */
  readonly history: versions.History;
  /** The document behind a site of the history; a site that was never of it is its own document. */
  readonly drawn: (site: Site) => Site;
  readonly preview: (site: Site) => void;
  readonly cancel: () => void;
  readonly commit: (site: Site, label: string) => void;
  /** Puts another document of the job on the pad in the place of the present one, as one step. */
  readonly exchange: (drawn: Site, label: string) => void;
  /** Begins another job with a document and puts it on the pad; undo brings the old one back. */
  readonly load: (drawn: Site, label: string) => void;
  /** Puts a job that was kept on the pad, with another one under it where there is one. */
  readonly take: (job: JobAgain, under: JobAgain | null) => void;
  /** Says which job undo goes on to at the beginning of the one on the pad. */
  readonly lay: (under: JobAgain | null) => void;
  /** The job on the pad goes on with another history, as another window has it; no draft outlasts that. */
  readonly follow: (job: JobAgain) => void;
  /** Undo and redo no longer lead to this job. */
  readonly drop: (job: JobId) => void;
  /** The job on the pad goes on under another name. */
  readonly rename: (job: JobId) => void;
  /** Forgets the oldest versions, so many. */
  readonly forget: (count: number) => void;
  readonly undo: () => void;
  readonly redo: () => void;
}

/** The pad after a move; where what it leads to cannot be read, the pad without what lies there. */
const readable = (pad: OnPad, move: (pad: OnPad) => OnPad, without: OnPad): OnPad => {
  const next = move(pad);
  try {
    return next.history.present.site === undefined ? without : next;
  } catch (error) {
    if (error instanceof RangeError) return without;
    throw error;
  }
};

/** The store of the pad. It starts with a job that begins with `first`; undo does not go behind it. */
export const createSiteStore = (first: Site, label = phrase`New site`, fresh = freshJobId) => {
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
  const lazy = ({ label: said, drawn }: LazyVersion): versions.Version => {
    let site: Site | null = null;
    return {
      label: said,
      get site() {
        return (site ??= stand(drawn()));
      },
    };
  };
  const again = ({ job, past, present, future }: JobAgain): OnPad => {
    const begun = versions.begin(stand(present.drawn), present.label);
    return pads.alone(job, { ...begun, past: past.map(lazy), future: future.map(lazy) });
  };
  return createStore<SiteState>()((set) => {
    const step = (change: (pad: OnPad) => OnPad): void =>
      set((state) => {
        const pad = change(state.pad);
        // the same state wakes no subscriber
        return pad === state.pad ? state : { pad, history: pad.history };
      });
    const within = (change: (history: versions.History) => versions.History): void =>
      step((pad) => pads.withHistory(pad, change(pad.history)));
    const pad = pads.alone(fresh(), versions.begin(stand(first), label));
    return {
      pad,
      history: pad.history,
      drawn: drawnOf,
      preview: (next) => within((history) => versions.preview(history, edit(history, next))),
      cancel: () => within(versions.cancel),
      commit: (next, said) =>
        step((now) => pads.commit(now, { site: edit(now.history, next), label: said })),
      exchange: (drawn, said) =>
        step((now) => pads.commit(now, { site: stand(drawn), label: said })),
      load: (drawn, said) =>
        step((now) => pads.begunOver(now, fresh(), versions.begin(stand(drawn), said))),
      take: (job, under) =>
        step(() => {
          const below = under === null ? null : again(under);
          return { ...again(job), under: below };
        }),
      lay: (under) => step((now) => ({ ...now, under: under === null ? null : again(under) })),
      follow: (job) =>
        step((now) =>
          now.job === job.job ? { ...now, history: again(job).history, over: null } : now,
        ),
      drop: (job) => step((now) => pads.without(now, job)),
      rename: (job) => step((now) => ({ ...now, job })),
      forget: (count) =>
        step((now) => ({
          ...now,
          under: null,
          history: { ...now.history, past: now.history.past.slice(count) },
        })),
      undo: () =>
        step((now) => {
          const history = versions.cancel({ ...now.history, past: [] });
          return readable(now, pads.undo, { ...now, history, under: null });
        }),
      redo: () =>
        step((now) => {
          const history = versions.cancel({ ...now.history, future: [] });
          return readable(now, pads.redo, { ...now, history, over: null });
        }),
    };
  });
};

export type SiteStore = ReturnType<typeof createSiteStore>;
