import { z } from './z.ts';
import { label, positiveLength } from './quantities.ts';
import type { Frozen } from './frozen.ts';

/**
 * What a post is made of, in inches: round pipe of that outside diameter, or square with `od` for its
 * side. Solid where `wall` is half of `od`. The trade name is a label.
 */
export const postPipeSchema = z.strictObject({
  label,
  od: positiveLength,
  wall: positiveLength,
  section: z.enum(['round', 'square']),
});

export type PostPipe = Frozen<z.infer<typeof postPipeSchema>>;
