import { z } from './z.ts';
import { positiveLength } from './quantities.ts';
import type { Frozen } from './frozen.ts';

/** A leaf out to out of its frame, in inches, at three heights; null where nobody has measured. */
export const widthsSchema = z.strictObject({
  top: positiveLength,
  middle: positiveLength.nullable(),
  bottom: positiveLength.nullable(),
});

export type Widths = Frozen<z.infer<typeof widthsSchema>>;
