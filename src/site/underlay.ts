import { z } from 'zod';
import { tieId } from './ids.ts';
import { coordinate, label } from './quantities.ts';
import type { Frozen } from './frozen.ts';

const pixels = z.number().int().min(1).max(32_768);

/** A point of the picture, in pixels right and down from its top left, and the site point it shows. */
const tie = z.strictObject({
  u: z.number().min(-65_536).max(65_536),
  v: z.number().min(-65_536).max(65_536),
  x: coordinate,
  y: coordinate,
});

/** SHA-256 of the picture's bytes, as 64 hex digits. */
const digest = z.string().regex(/^[0-9a-f]{64}$/, '64 hex digits');

const picture = z.discriminatedUnion('kept', [
  /** In this file: the bytes in base64. */
  z.strictObject({
    kept: z.literal('in the file'),
    type: z.enum(['image/jpeg', 'image/png', 'image/webp']),
    data: z.string().regex(/^[A-Za-z0-9+/]*={0,2}$/, 'base64'),
    digest,
  }),
  /** Beside this file: on the device, or in a picture file that is asked for. */
  z.strictObject({ kept: z.literal('beside the file'), name: label, digest }),
]);

/** A photo, scan or page under the drawing. Two ties turn and scale it, four straighten it. */
export const underlaySchema = z.strictObject({
  label,
  picture,
  width: pixels,
  height: pixels,
  ties: z.record(tieId, tie),
  /** How much of it shows: 0 nothing, 1 all. */
  shows: z.number().min(0).max(1),
  locked: z.boolean(),
});

export type Underlay = Frozen<z.infer<typeof underlaySchema>>;
