import { countingSchema, usualCounting, type Counting } from '../site/counting.ts';

/**
 * How a company counts, as a device kept it for new sites; null where it kept nothing, or in another form.
 * What an older program did not know of yet is as the trade has it.
 */
export const readCountingAtHand = (value: unknown): Counting | null => {
  if (typeof value !== 'object' || value === null) return null;
  const read = countingSchema.safeParse({ ...usualCounting, ...value });
  return read.success ? read.data : null;
};
