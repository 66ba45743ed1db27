import { z } from './z.ts';
import { length, positiveLength, signedLength } from './quantities.ts';
import type { Frozen } from './frozen.ts';

/** How a post is set on concrete; lengths in inches. */
const setOnWall = z.discriminatedUnion('kind', [
  /** In a hole that is drilled into it: so deep, and so much wider than the post. */
  z.strictObject({ kind: z.literal('cored'), depth: positiveLength, room: length }),
  /** On a square plate, so long a side, that is bolted to it. */
  z.strictObject({ kind: z.literal('plate'), side: positiveLength }),
]);

/** The top of a concrete wall or kerb that a leg of fence stands on; lengths in inches. */
export const wallTopSchema = z.strictObject({
  /** Through the wall. The fence stands over its middle. */
  width: positiveLength,
  /** Of the top over the ground at an end of the leg, the lesser of the two. */
  height: length,
  /** Of the top, from the start of the leg to its end; negative falls. */
  rise: signedLength,
  /** In how many equal steps it rises, between level parts of one length; 0 where it slopes evenly. */
  steps: z.number().int().min(0).max(200),
  set: setOnWall,
});

export type WallTop = Frozen<z.infer<typeof wallTopSchema>>;
