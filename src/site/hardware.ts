import { z } from './z.ts';
import { label, length, positiveLength, remark } from './quantities.ts';
import type { Frozen } from './frozen.ts';
import { phrase } from '../phrases/phrase.ts';

/** What a part takes up, in inches: smallest, planned, largest. */
const takesSchema = z
  .strictObject({ low: length, planned: length, high: length })
  .refine(({ low, planned, high }) => low <= planned && planned <= high, {
    message: phrase`low, planned and high in rising order`,
  });

/** Outside diameters that a part fits, in inches. */
const fit = z
  .strictObject({ low: positiveLength, high: positiveLength })
  .refine(({ low, high }) => low <= high, { message: phrase`low at most high` })
  .nullable();

const rising = (readings: readonly number[]): boolean =>
  readings.every((reading, n) => n === 0 || (readings[n - 1] ?? 0) <= reading);

/**
 * A part of a gate. A hinge set takes up room between post face and frame; a latch or drop rod
 * catches at any gap from low to high, between frame and post face or between two frames; a
 * closer takes up none.
 */
export const hardwareSchema = z.strictObject({
  kind: z.enum(['hinge', 'latch', 'drop rod', 'closer']),
  label,
  takes: takesSchema,
  /**
   * `uncertain`: its size lies somewhere from low to high; `adjustable`: it can be set anywhere
   * from low to high. Of a latch it says nothing: that catches anywhere in its range.
   */
  spread: z.enum(['uncertain', 'adjustable']),
  from: z.enum(['measured', 'book', 'assumed']),
  /** The day on which it was measured or put in the book, as a person wrote it. */
  on: label,
  /** What was read off each part on order, inches, smallest first. */
  readings: z
    .array(length)
    .max(24)
    .refine(rising, { message: phrase`the smallest first` }),
  /** The posts and frames it fits, by outside diameter; null where nobody has said. */
  fits: z.strictObject({ post: fit, frame: fit }),
  /** Of a hinge: from the face of the post to the pin, in inches; null where nobody has said. */
  pin: length.nullable(),
  remark,
});

/**
 * The version of the file format in which a part last changed: what a hardware book kept since then
 * is still read by later versions. A part that changes takes a step for books as well.
 */
export const partVersion = 2;

export type Hardware = Frozen<z.infer<typeof hardwareSchema>>;
