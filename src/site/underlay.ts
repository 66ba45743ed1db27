import { z } from './z.ts';
import { pictureId, tieId } from './ids.ts';
import { coordinate, label, within } from './quantities.ts';
import type { Frozen } from './frozen.ts';

/** A side of a picture as it came, pixels. */
const pixels = z.number().int().min(1).max(32_768);
/** A coordinate on a picture, pixels; a point may lie beside it. */
const pixel = within(-65_536, 65_536);

/** A point of the picture, in pixels right and down from its top left, and the site point it shows. */
const tie = z.strictObject({ u: pixel, v: pixel, x: coordinate, y: coordinate });

/**
 * A photo, scan or page under the drawing. Two ties turn and scale it, four straighten it. What it is
 * made of is found by its id: in the `pictures` of this file where it is kept in it, else on the device.
 */
export const underlaySchema = z.strictObject({
  label,
  picture: pictureId,
  /** The name of the file that it came from: asked for where the picture is not at hand. */
  file: label,
  width: pixels,
  height: pixels,
  ties: z.record(tieId, tie),
  /** Whether anybody has said how large it is on the ground. */
  size: z.enum(['guessed', 'told']),
  /** How much of it shows: 0 nothing, 1 all. */
  shows: z.number().min(0).max(1),
  locked: z.boolean(),
});

export type Underlay = Frozen<z.infer<typeof underlaySchema>>;
