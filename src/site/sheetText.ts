import { saveSite } from './saveSite.ts';
import type { Site } from './site.ts';

/**
 * The text of all of a site that a sheet shows: as `saveSite` has it without the pictures under the
 * drawing and without its alternatives, so that two prints of one yard have one check value whatever lies
 * under it on the pad and however else it might be built.
 */
export const sheetText = (site: Site): string =>
  saveSite({ ...site, alternatives: {}, underlays: {}, pictures: {} });
