import { checked } from './checked.ts';
import { kept } from './kept.ts';
import { levelsSchema, type Levels } from './levels.ts';
import type { Site } from './site.ts';

/**
 * A site with other level notes; the same site when they say what they say already. RangeError with
 * one line for a value that the document cannot hold.
 */
export const withLevels = (site: Site, levels: Levels): Site => {
  const fresh = kept(site.levels, checked(levelsSchema, levels, ['levels']));
  return fresh === site.levels ? site : { ...site, levels: fresh };
};
