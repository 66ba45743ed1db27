import { drawnAlike } from '../../site/drawnAlike.ts';
import { kept } from '../../site/kept.ts';
import type { Site } from '../../site/site.ts';
import { layOutSite } from '../layOutSite.ts';
import { loadOf } from '../load/loadOf.ts';
import type { Candidate, Named } from './candidate.ts';

/** A site that shares its lines with one before it, where they are built alike. */
const sharing = (site: Site, before: Site): Site => {
  const lines = kept(before.lines, site.lines) as Site['lines'];
  return lines === site.lines ? site : { ...site, lines };
};

/**
 * Yards laid out and counted, in their order. What was worked out `before`, or of one of them, is taken over
 * for those that are laid out alike, so that a name or one alternative among several costs no more than it
 * changes.
 */
export const candidatesOf = (
  named: readonly Named[],
  before: readonly Candidate[] = [],
): Candidate[] => {
  const found: Candidate[] = [];
  for (const one of named) {
    const alike = ({ site }: Candidate): boolean => drawnAlike(site, sharing(one.site, site));
    const known = before.find(alike) ?? found.find(alike);
    const layout = known?.layout ?? layOutSite(one.site);
    found.push({ ...one, layout, load: known?.load ?? loadOf(one.site, layout) });
  }
  return found;
};
