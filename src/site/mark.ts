import { z } from './z.ts';
import { coordinate, label } from './quantities.ts';
import type { Frozen } from './frozen.ts';

/**
 * A point on the ground that one can put a lath on: where it was drawn, in inches, x east, y north.
 * What was observed of it says where it stands.
 */
export const markSchema = z.strictObject({
  x: coordinate,
  y: coordinate,
  label,
  /** What is observed does not move it. */
  fixed: z.boolean(),
});

export type Mark = Frozen<z.infer<typeof markSchema>>;
