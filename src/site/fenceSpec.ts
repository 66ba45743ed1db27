import { z } from './z.ts';
import { infillSchema } from './infill.ts';
import { pipeSchema } from './pipe.ts';
import { postPipeSchema } from './postPipe.ts';
import {
  angle,
  label,
  length,
  positiveLength,
  ratio,
  remark,
  signedLength,
  within,
} from './quantities.ts';
import { selvageSchema } from './selvage.ts';
import type { Frozen } from './frozen.ts';

/** How a fence line is built. Carried in the file, so that a file is complete. Lengths in inches. */
export const fenceSpecSchema = z.strictObject({
  label,
  remark,
  /** What hangs between the posts: its height is `fabricHeight`, whatever it is. */
  infill: infillSchema,
  fabricHeight: positiveLength,
  /** Line posts stand no farther apart than this, centre to centre. */
  maxBay: positiveLength,
  /** A mark at which the line turns by more than this gets a corner post; radians. */
  cornerAngle: angle,
  linePost: postPipeSchema,
  terminalPost: postPipeSchema,
  gatePost: postPipeSchema,
  topRail: pipeSchema.nullable(),
  /** Half way up, and along the bottom of the fabric; null for none. */
  middleRail: pipeSchema.nullable(),
  bottomRail: pipeSchema.nullable(),
  /** Barbed wire over the fabric: how many strands, and how its arms lean; null for none. */
  barbedWire: z
    .strictObject({
      strands: z.int().min(1).max(12),
      arms: z.enum(['upright', 'outward', 'inward', 'both ways']),
    })
    .nullable(),
  /** The steel of posts and rails; null for what the table has for a pipe of that size. */
  grade: z.enum(['regular', 'high strength']).nullable(),
  /** Of the fabric: clear between parallel wires, and their diameter; null where nobody has said. */
  mesh: positiveLength.nullable(),
  wire: positiveLength.nullable(),
  /** How its edges are made; null where nobody has said. */
  selvage: selvageSchema.nullable(),
  /** The share that slats or a screen leave solid, 0 to 1; null for fabric alone. */
  solid: within(0, 1).nullable(),
  /** No hole in the ground is shallower than this, inches; 0 for as deep as the rules ask. */
  leastDepth: length,
  /** Top of the post over the nominal top of the fabric; negative is below it. */
  terminalAbove: signedLength,
  lineAbove: signedLength,
  /** The farthest that fabric is stretched: a pull post at least so often; null for none. */
  pullInterval: positiveLength.nullable(),
  /** How the longest bay of a curved leg is chosen: by its radius, or as of a straight one. */
  onCurves: z.enum(['by radius', 'as straight']),
  /** A change of grade, rise over run, above which a pull post stands at it; null for none. */
  pullGrade: ratio.nullable(),
  /** The most that there may be between the ground and the bottom of the fabric. */
  gapUnder: length,
  /** Between a wall and the face of the post that ends the fence there. */
  wallGap: length,
  /** How far the foundation of such a wall reaches out from its face under ground; null where nobody has said. */
  foundationToe: length.nullable(),
});

export type FenceSpec = Frozen<z.infer<typeof fenceSpecSchema>>;
