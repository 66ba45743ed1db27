import { z } from 'zod';
import { coordinate, label } from './quantities.ts';
import type { Frozen } from './frozen.ts';

/** A point on the ground that one can put a lath on; inches, x east, y north. */
export const markSchema = z.strictObject({ x: coordinate, y: coordinate, label });

export type Mark = Frozen<z.infer<typeof markSchema>>;
