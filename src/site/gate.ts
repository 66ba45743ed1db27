import { z } from './z.ts';
import { anchorSchema } from './anchorSchema.ts';
import { asSetSchema } from './asSet.ts';
import { gateWaySchema } from './gateWay.ts';
import { hardwareId, leafId, lineId, vertexId } from './ids.ts';
import { pipeSchema } from './pipe.ts';
import { postPipeSchema } from './postPipe.ts';
import { label, length, positiveLength } from './quantities.ts';
import { receiverSchema } from './receiver.ts';
import { signOffSchema } from './signOff.ts';
import { widthsSchema } from './widths.ts';
import type { Frozen } from './frozen.ts';

/** One gate panel, measured out to out of its frame. */
const leafSchema = z.strictObject({
  order: z.string().regex(/^[0-9A-Za-z]{1,60}$/),
  widths: widthsSchema,
  /** Out to out of the frame, in inches. */
  height: positiveLength.nullable(),
  /** The pipe of its frame. */
  frame: pipeSchema.nullable(),
  /** `copied` are widths taken over from another leaf: they stay flagged until it is measured. */
  from: z.enum(['measured', 'copied', 'catalogue']),
  /** The day on which it was measured, as a person wrote it. */
  on: label,
  /** Null for a leaf that rolls. */
  hinge: hardwareId.nullable(),
});

/** A gate in a fence line, or a gap: its leaves, their hinges and the latch between. */
export const gateSchema = z.strictObject({
  label,
  line: lineId,
  /** The vertex at which the gate's leg starts; the leg runs to the next vertex of the line. */
  leg: vertexId,
  /**
   * Where along the leg. From `start` or `end`: from the mark there to the centre of
   * the nearer gate post. From `middle`: from the middle of the leg to the middle of the opening,
   * positive towards the leg's end.
   */
  anchor: anchorSchema,
  way: gateWaySchema,
  leaves: z.record(leafId, leafSchema),
  /** Null for a gap only. */
  latch: hardwareId.nullable(),
  /** The side to which the leaves open or roll, looking along the leg from its start. */
  opens: z.enum(['left', 'right']),
  /** For a single leaf: the gate post that carries the hinges, by the end of the leg it is nearer to. */
  hingedAt: z.enum(['start', 'end']),
  /** From the ground to the bottom of the leaves, in inches; null where nobody has said. */
  bottom: length.nullable(),
  /** The closer on each leaf. */
  closer: hardwareId.nullable(),
  /** True where a post holds each leaf open. */
  holdOpen: z.boolean(),
  receiver: receiverSchema.nullable(),
  /** From the ground to what releases the latch, in inches; null where nobody has said. */
  latchHeight: length.nullable(),
  /** What has to pass: people in wheelchairs, or fire engines; null where nobody has said of any. */
  route: z.enum(['accessible', 'fire']).nullable(),
  /** How far the sill or the edge of the paving stands up in the opening, inches; null where nobody has said. */
  threshold: length.nullable(),
  /** Whether a motor moves it. */
  powered: z.boolean(),
  /** The size people call the gate by, in inches; never used as a dimension. */
  nominal: positiveLength.nullable(),
  /** The gate posts of this gate; null takes those of the fence spec. */
  post: postPipeSchema.nullable(),
  signed: signOffSchema.nullable(),
  asSet: asSetSchema.nullable(),
});

export type Leaf = Frozen<z.infer<typeof leafSchema>>;
export type Gate = Frozen<z.infer<typeof gateSchema>>;
