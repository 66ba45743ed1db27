import { z } from './z.ts';
import { coordinate, label, signedLength } from './quantities.ts';
import type { Frozen } from './frozen.ts';

/** A grade shot: a point of the ground of known height; inches, x east, y north, z up. */
export const shotSchema = z.strictObject({ x: coordinate, y: coordinate, z: signedLength, label });

export type Shot = Frozen<z.infer<typeof shotSchema>>;
