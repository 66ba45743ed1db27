import type { Candidate } from '../engine/compare/candidate.ts';
import { candidatesOf } from '../engine/compare/candidatesOf.ts';
import { namedSites } from '../engine/compare/namedSites.ts';
import type { Site } from '../site/site.ts';

/**
 * The candidates of a site, worked out from those of the site that was asked for before: only what an edit
 * changed is laid out and counted again. What has been worked out already elsewhere can be handed over.
 */
export const rememberCandidates = (): ((
  site: Site,
  laid?: readonly Candidate[],
) => readonly Candidate[]) => {
  let known: { readonly site: Site; readonly candidates: readonly Candidate[] } | null = null;
  return (site, laid = []) => {
    if (known?.site !== site) {
      const before = [...laid, ...(known?.candidates ?? [])];
      known = { site, candidates: candidatesOf(namedSites(site), before) };
    }
    return known.candidates;
  };
};
