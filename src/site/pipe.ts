import { z } from './z.ts';
import { label, positiveLength } from './quantities.ts';
import type { Frozen } from './frozen.ts';

/** Round pipe. The actual outside diameter and wall count, in inches; the trade name is a label. */
export const pipeSchema = z.strictObject({ label, od: positiveLength, wall: positiveLength });

export type Pipe = Frozen<z.infer<typeof pipeSchema>>;
