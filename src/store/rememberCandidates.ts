import type { Candidate } from '../engine/compare/candidate.ts';
import { candidatesOf } from '../engine/compare/candidatesOf.ts';
import { namedSites } from '../engine/compare/namedSites.ts';
import type { Site } from '../site/site.ts';

/**
 * The candidates of a site, worked out from those of the site that was asked for before: only what an edit
 * changed is laid out and counted again.
 */
export const rememberCandidates = (): ((site: Site) => readonly Candidate[]) => {
  let known: { readonly site: Site; readonly candidates: readonly Candidate[] } | null = null;
  return (site) => {
    if (known?.site !== site) {
      known = { site, candidates: candidatesOf(namedSites(site), known?.candidates ?? []) };
    }
    return known.candidates;
  };
};
