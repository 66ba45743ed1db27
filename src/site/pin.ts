import { z } from './z.ts';
import { anchorSchema } from './anchorSchema.ts';
import { lineId, vertexId } from './ids.ts';
import { positiveLength } from './quantities.ts';
import type { Frozen } from './frozen.ts';

/**
 * What a person asks of one place of a leg: that a line post stands there, or that no hole is dug
 * there. The rest of the stretch is divided again round it.
 */
export const pinSchema = z.strictObject({
  line: lineId,
  /** The vertex at which the leg starts. */
  leg: vertexId,
  /** The centre of the post, or the middle of the ground that is kept clear. */
  anchor: anchorSchema,
  holds: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('post') }),
    /** No hole within so many inches to either side. */
    z.strictObject({ kind: z.literal('clear'), reach: positiveLength }),
  ]),
});

export type Pin = Frozen<z.infer<typeof pinSchema>>;
