import type { LevelId } from '../ids.ts';
import { quoted } from '../quoted.ts';
import type { Site } from '../site.ts';
import { withLevels } from '../withLevels.ts';
import type { LevelReadings } from './addLevelNote.ts';
import { phrase } from '../../phrases/phrase.ts';

/**
 * Changes what is written in a level note. RangeError for an unknown note and for a reading that the
 * document cannot hold.
 */
export const changeLevelNote = (site: Site, id: LevelId, change: Partial<LevelReadings>): Site => {
  const { notes } = site.levels;
  const note = Object.hasOwn(notes, id) ? notes[id] : undefined;
  if (note === undefined) {
    throw new RangeError(phrase`levels › notes: expected a note of this site, found ${quoted(id)}`);
  }
  return withLevels(site, { ...site.levels, notes: { ...notes, [id]: { ...note, ...change } } });
};
