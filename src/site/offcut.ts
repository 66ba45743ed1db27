import { z } from './z.ts';
import type { Frozen } from './frozen.ts';
import { positiveLength } from './quantities.ts';

/** Pieces of one length that lie in the company's yard and are cut up first. */
export const offcutSchema = z.strictObject({
  /** The code of the line of the load list whose sticks or rolls they are left over from. */
  of: z.string().min(1).max(120),
  /** Of each, inches. */
  length: positiveLength,
  count: z.int().min(1).max(1000),
});

export type Offcut = Frozen<z.infer<typeof offcutSchema>>;
