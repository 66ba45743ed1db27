import { z } from './z.ts';
import { label } from './quantities.ts';
import type { Frozen } from './frozen.ts';

/**
 * That somebody has checked an opening: initials, day, the check value, and everything that the
 * opening depended on at that hour, so that a later change can be told from what to what.
 * Lengths in it are numbers, in inches.
 */
export const signOffSchema = z.strictObject({
  by: label.min(1),
  on: label,
  check: z.string().regex(/^[0-9A-F]{8}$/),
  rested: z.record(z.string().min(1).max(120), z.union([z.number(), label])),
});

export type SignOff = Frozen<z.infer<typeof signOffSchema>>;
