import { z } from 'zod';
import { hardwareId, leafId, lineId, vertexId } from './ids.ts';
import { label, positiveLength, signedLength } from './quantities.ts';
import { pipeSchema } from './pipe.ts';
import type { Frozen } from './frozen.ts';

/** One gate panel, measured out to out of its frame. */
export const leafSchema = z.strictObject({
  order: z.string().regex(/^[0-9A-Za-z]{1,60}$/),
  width: positiveLength,
  /** `copied` is a width taken over from another leaf: it stays flagged until it is measured. */
  from: z.enum(['measured', 'copied', 'catalogue']),
  hinge: hardwareId,
});

/** A gate in a fence line: one or two leaves, their hinges and the latch between. */
export const gateSchema = z.strictObject({
  label,
  line: lineId,
  /** The vertex at which the gate's leg starts; the leg runs to the next vertex of the line. */
  leg: vertexId,
  /**
   * Where along the leg, in inches. From `start` or `end`: from the mark there to the centre of
   * the nearer gate post. From `middle`: from the middle of the leg to the middle of the opening,
   * positive towards the leg's end.
   */
  anchor: z.strictObject({ from: z.enum(['start', 'end', 'middle']), offset: signedLength }),
  leaves: z.record(leafId, leafSchema),
  latch: hardwareId,
  /** The side to which the leaves open, looking along the leg from its start. */
  opens: z.enum(['left', 'right']),
  /** For a single leaf: the gate post that carries the hinges, by the end of the leg it is nearer to. */
  hingedAt: z.enum(['start', 'end']),
  /** The size people call the gate by, in inches; never used as a dimension. */
  nominal: positiveLength.nullable(),
  /** The gate posts of this gate; null takes those of the fence spec. */
  post: pipeSchema.nullable(),
});

export type Leaf = Frozen<z.infer<typeof leafSchema>>;
export type Gate = Frozen<z.infer<typeof gateSchema>>;
