import { z } from './z.ts';
import { length, positiveLength } from './quantities.ts';
import type { Frozen } from './frozen.ts';

/**
 * What a drop rod drops into at the meeting edge of two leaves. Inches: depth under the ground,
 * inside diameter, and the outside diameter of the rod, how far the rod rises when it is lifted.
 */
export const receiverSchema = z.strictObject({
  kind: z.enum(['driven pipe', 'drilled', 'set in concrete']),
  ground: z.enum(['firm soil', 'loose soil', 'concrete', 'paving']),
  depth: positiveLength,
  inside: positiveLength,
  rod: positiveLength,
  lift: length,
});

export type Receiver = Frozen<z.infer<typeof receiverSchema>>;
