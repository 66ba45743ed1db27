import { z } from 'zod';
import { specId, vertexId } from './ids.ts';
import { pathSchema } from './path.ts';
import { label } from './quantities.ts';
import type { Frozen } from './frozen.ts';

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
});

export type FenceLine = Frozen<z.infer<typeof fenceLineSchema>>;
