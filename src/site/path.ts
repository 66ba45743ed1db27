import { z } from './z.ts';
import { markId, vertexId } from './ids.ts';
import type { Frozen } from './frozen.ts';

/**
 * The marks that a line passes, in the order of their keys (compared as plain strings).
 * Keys instead of an array: two people can add marks apart and the files still merge.
 */
export const pathSchema = z.record(
  vertexId,
  z.strictObject({ mark: markId, order: z.string().regex(/^[0-9A-Za-z]{1,60}$/) }),
);

export type Path = Frozen<z.infer<typeof pathSchema>>;
