import { z } from './z.ts';
import { featureId, specId, vertexId } from './ids.ts';
import { pathSchema } from './path.ts';
import { label, signedLength } from './quantities.ts';
import { wallTopSchema } from './wallTop.ts';
import type { Frozen } from './frozen.ts';
import { phrase } from '../phrases/phrase.ts';

/** A chain of legs, open or closed, built to one fence spec. */
export const fenceLineSchema = z.strictObject({
  label,
  spec: specId,
  closed: z.boolean(),
  /** The end of each run at which the crew hooks the tape. */
  hook: z.enum(['start', 'end']),
  path: pathSchema,
  /** The legs, by the vertices at which they start, whose fabric is stepped; the others follow the grade. */
  stepped: z.record(vertexId, z.literal(true)),
  /**
   * The legs that are arcs: how far the middle of each lies off its chord, in inches, to the left of
   * the way it runs; negative to the right.
   */
  curved: z.record(
    vertexId,
    signedLength.refine((off) => off !== 0, phrase`a length other than 0`),
  ),
  /** The legs that stand on a wall or kerb. */
  walls: z.record(vertexId, wallTopSchema),
  /**
   * The boundary that the line goes along, corner for corner, and how far inside it, in inches; on
   * the left of the way an open one runs. Null for a line that stands by itself.
   */
  follows: z.strictObject({ feature: featureId, inside: signedLength }).nullable(),
  /** What it is a barrier round, so that people and children do not get to it; null for nothing. */
  guards: z.literal('pool').nullable(),
});

export type FenceLine = Frozen<z.infer<typeof fenceLineSchema>>;
