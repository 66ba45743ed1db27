import { merged } from '../site/merge/merged.ts';
import type { Conflict } from '../site/merge/conflict.ts';
import { openDocument } from '../site/openDocument.ts';
import type { Site } from '../site/site.ts';
import { changeBetween, type KeptDocument } from './change.ts';
import type { KeptJob } from './loadKept.ts';
import { withBytes, withoutBytes } from './picturesApart.ts';
import type { JobAgain } from './siteStore.ts';
import { stepped, type Trail } from './trail.ts';

/** The present of a job as a window has it: the document as drawn, and the edit that led to it. */
export interface Present {
  readonly drawn: Site;
  readonly label: string;
}

/** A job that two windows changed, as one. */
export interface Joined {
  readonly trail: Trail;
  readonly again: JobAgain;
  /** What both changed to different values, where what this window has stands. */
  readonly conflicts: readonly Conflict[];
}

const opened = (base: KeptDocument, sites: readonly Site[]): Site | null => {
  const pictures = Object.assign({}, ...sites.map((site) => site.pictures)) as Site['pictures'];
  const site = openDocument(withBytes(base, pictures));
  return site.ok ? site.value : null;
};

/**
 * What another window made of a job, with what this one had not written yet as one step after it. `base` is
 * what this window knew to lie on the shelf; null where it knew of nothing. Where this window has nothing of
 * its own, the job is as the other has it, with the same trail.
 */
export const joined = (
  base: KeptDocument | null,
  mine: Present,
  { ledger, again }: KeptJob,
): Joined => {
  const theirs = again.present.drawn;
  const from = base === null ? null : opened(base, [theirs, mine.drawn]);
  const { site, conflicts } = merged(from, mine.drawn, theirs);
  const document = withoutBytes(site);
  if (changeBetween(ledger.trail.present, document).length === 0)
    return { trail: ledger.trail, again, conflicts: [] };
  const before = { label: again.present.label, drawn: () => theirs };
  return {
    trail: stepped(ledger.trail, document, mine.label),
    again: {
      job: again.job,
      past: [...again.past, before],
      present: { drawn: site, label: mine.label },
      future: [],
    },
    conflicts,
  };
};
