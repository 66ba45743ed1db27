import type { LevelId } from '../ids.ts';
import type { LevelNote } from '../levels.ts';
import { nextId } from '../nextId.ts';
import { inOrder, orderBetween } from '../pathOrder.ts';
import type { Site } from '../site.ts';
import { withLevels } from '../withLevels.ts';

/** What is written in a level note. */
export type LevelReadings = Omit<LevelNote, 'order'>;

/**
 * Adds a level note under `nextId(site, 'level')`: after another, or after all where `after` is null.
 * RangeError for a reading that the document cannot hold.
 */
export const addLevelNote = (
  site: Site,
  readings: LevelReadings,
  after: LevelId | null = null,
): Site => {
  const { notes } = site.levels;
  const all = inOrder<LevelId, LevelNote>(notes);
  const place = after === null ? all.length - 1 : all.findIndex(({ id }) => id === after);
  const order = orderBetween(all[place]?.order ?? null, all[place + 1]?.order ?? null);
  const id = nextId(site, 'level');
  return withLevels(site, { ...site.levels, notes: { ...notes, [id]: { ...readings, order } } });
};
