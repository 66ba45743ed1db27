import { z } from './z.ts';
import { levelId } from './ids.ts';
import { label, length, signedLength } from './quantities.ts';
import type { Frozen } from './frozen.ts';

/** One line of level notes as it was written: rod readings, heights and distances in inches. */
const levelNote = z.strictObject({
  order: z.string().regex(/^[0-9A-Za-z]{1,60}$/),
  /** What was read; a grade shot of the same label gets its height from here. */
  point: label,
  backsight: length.nullable(),
  intermediate: length.nullable(),
  foresight: length.nullable(),
  /** The height of a benchmark. */
  known: signedLength.nullable(),
  /** How far the sights went from the turning point before. */
  distance: length.nullable(),
});

/** Level notes, in the order of their keys, and how far they may close off. */
export const levelsSchema = z.strictObject({
  allowable: length.nullable(),
  notes: z.record(levelId, levelNote),
});

export type LevelNote = Frozen<z.infer<typeof levelNote>>;
export type Levels = Frozen<z.infer<typeof levelsSchema>>;
