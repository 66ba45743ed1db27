import type { Feature } from '../../site/feature.ts';
import type { Site } from '../../site/site.ts';

/** What is for a crew alone: where it may not dig, how high it may build, what was noted for it. */
const crewOnly: ReadonlySet<Feature['kind']> = new Set(['keep-out', 'height zone', 'note']);

/** A site without what a crew alone is told of: notes, and ground closed to its work. */
export const customerSite = (site: Site): Site => ({
  ...site,
  features: Object.fromEntries(
    Object.entries(site.features).filter(([, { kind }]) => !crewOnly.has(kind)),
  ),
  pins: {},
});
