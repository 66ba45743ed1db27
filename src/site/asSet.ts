import { z } from './z.ts';
import { leafId } from './ids.ts';
import { label, length, positiveLength, remark, signedLength } from './quantities.ts';
import { widthsSchema } from './widths.ts';
import type { Frozen } from './frozen.ts';

/**
 * What the crew found when the posts of a gate were set. Inches: the opening, inside face to
 * inside face, at the top and at the bottom; how far the top of each post leans into the opening
 * (negative: out of it); leaves and hinge sets as measured again on site.
 */
export const asSetSchema = z.strictObject({
  by: label,
  on: label,
  top: positiveLength,
  bottom: positiveLength.nullable(),
  leans: z.strictObject({ start: signedLength.nullable(), end: signedLength.nullable() }),
  leaves: z.record(leafId, widthsSchema),
  hinges: z.record(leafId, length),
  remark,
});

export type AsSet = Frozen<z.infer<typeof asSetSchema>>;
