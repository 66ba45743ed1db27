import { z } from 'zod';
import { length, positiveLength } from './quantities.ts';
import type { Frozen } from './frozen.ts';

/** What a fence has between its posts; lengths in inches. */
export const infillSchema = z.discriminatedUnion('kind', [
  /** Chain-link fabric, stretched. */
  z.strictObject({ kind: z.literal('chain link') }),
  /** Boards or pickets of one width on rails, so far apart; 0 for a tight fence. */
  z.strictObject({
    kind: z.literal('boards'),
    rails: z.int().min(1).max(6),
    width: positiveLength,
    gap: length,
  }),
  /** Panels of one width that are hung whole: the last one cut, or all bays as wide as each other. */
  z.strictObject({
    kind: z.literal('panels'),
    width: positiveLength,
    last: z.enum(['cut', 'all equal']),
  }),
]);

export type Infill = Frozen<z.infer<typeof infillSchema>>;
