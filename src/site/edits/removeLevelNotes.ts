import type { LevelId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withLevels } from '../withLevels.ts';

/** Takes level notes out; those that are not there change nothing. */
export const removeLevelNotes = (site: Site, ids: readonly LevelId[]): Site => {
  const gone = new Set<string>(ids);
  const rest = Object.entries(site.levels.notes).filter(([id]) => !gone.has(id));
  return withLevels(site, { ...site.levels, notes: Object.fromEntries(rest) });
};
