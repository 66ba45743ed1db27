import { z } from 'zod';
import { label, length, remark } from './quantities.ts';
import type { Frozen } from './frozen.ts';

/** What a part takes up, in inches: smallest, planned, largest. */
const spread = z.strictObject({ low: length, planned: length, high: length });

/**
 * A hinge set (what it takes up between post face and frame) or a latch (the gaps in which it
 * still catches, between frame and post face or between two frames).
 */
export const hardwareSchema = z
  .strictObject({
    kind: z.enum(['hinge', 'latch', 'drop rod']),
    label,
    takes: spread,
    from: z.enum(['measured', 'book', 'assumed']),
    remark,
  })
  .refine(({ takes }) => takes.low <= takes.planned && takes.planned <= takes.high, {
    message: 'expected low, planned and high in rising order',
    path: ['takes'],
  });

export type Hardware = Frozen<z.infer<typeof hardwareSchema>>;
