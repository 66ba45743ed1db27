import type { z } from './z.ts';
import { issueLine } from './issueLine.ts';

/**
 * A value as a schema reads it. RangeError with one line (the place `where` in the document, what
 * was expected, the value) when it does not fit.
 */
export const checked = <T>(schema: z.ZodType<T>, value: unknown, where: readonly string[]): T => {
  const result = schema.safeParse(value);
  if (result.success) return result.data;
  throw new RangeError(issueLine(result.error, value, where));
};
