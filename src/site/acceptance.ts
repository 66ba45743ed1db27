import { z } from './z.ts';
import { label, remark } from './quantities.ts';
import type { Frozen } from './frozen.ts';

/**
 * That somebody knows of a flag and builds as drawn: which flag, what it said then, why it is
 * accepted, by whom and on what day. What is flagged anew, or says something else, is not covered.
 */
export const acceptanceSchema = z.strictObject({
  rule: label.min(1),
  /** The kind and id of what the flag stands on, such as `gate gate:1`. */
  on: label.min(1),
  said: remark,
  reason: label.min(1),
  by: label.min(1),
  day: label,
});

export type Acceptance = Frozen<z.infer<typeof acceptanceSchema>>;
