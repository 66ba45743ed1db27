import { phrase } from '../../../phrases/phrase.ts';
import type { LevelReadings } from '../../../site/edits/addLevelNote.ts';
import { inches } from '../../../units/inches.ts';

/** A note in which nothing is written yet. */
export const emptyNote: LevelReadings = {
  point: '',
  backsight: null,
  intermediate: null,
  foresight: null,
  known: null,
  distance: null,
};

/** The first note: a benchmark that is the datum of the yard, until another height is typed. */
export const benchmarkNote: LevelReadings = { ...emptyNote, point: phrase`BM`, known: inches(0) };
