import { saveSite } from './saveSite.ts';
import type { Site } from './site.ts';

/**
 * The text of all of a site that a sheet shows: as `saveSite` has it without the pictures under the
 * drawing, so that two prints of one yard have one check value whatever lies under it on the pad.
 */
export const sheetText = (site: Site): string => saveSite({ ...site, underlays: {}, pictures: {} });
