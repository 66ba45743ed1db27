import { z } from './z.ts';
import { label, length, positiveLength } from './quantities.ts';
import type { Frozen } from './frozen.ts';

/** What a fence has between its posts; lengths in inches. */
export const infillSchema = z.discriminatedUnion('kind', [
  /** Chain-link fabric, stretched. */
  z.strictObject({ kind: z.literal('chain link') }),
  /** Boards or pickets of one width on rails, so far apart; 0 for a tight fence. */
  z.strictObject({
    kind: z.literal('boards'),
    /** What a board is, and what a rail is, in words. */
    board: label,
    rail: label,
    rails: z.int().min(1).max(6),
    width: positiveLength,
    gap: length,
  }),
  /**
   * Panels of one width, with what their brackets take, from face to face of two posts: hung whole from
   * where the tape is hooked and the last one cut, or all cut to one width.
   */
  z.strictObject({
    kind: z.literal('panels'),
    /** What a panel is, in words. */
    panel: label,
    width: positiveLength,
    last: z.enum(['cut', 'all equal']),
  }),
]);

export type Infill = Frozen<z.infer<typeof infillSchema>>;
