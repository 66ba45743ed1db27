import { z } from './z.ts';
import { label, length, remark } from './quantities.ts';
import type { Frozen } from './frozen.ts';

/** What a rule of a town can set a limit to, each a length that a plan has. */
export const townMeasures = [
  'fence no higher than',
  'pool barrier no lower than',
  'gap under fabric no more than',
  'fence no nearer the boundary than',
  'holes no shallower than',
  'barbed wire no lower than',
  'clear passage no less than',
] as const;

/** One line that a town asks of fences: a length that the plan is compared with, or words to be minded. */
export const townRuleSchema = z.strictObject({
  town: label.min(1),
  /** What is compared with the limit; null for words alone. */
  measure: z.enum(townMeasures).nullable(),
  /** Inches; null for words alone. */
  limit: length.nullable(),
  words: remark,
  /** Where the town says so, as a person wrote it. */
  source: label,
});

export type TownRule = Frozen<z.infer<typeof townRuleSchema>>;
export type TownMeasure = (typeof townMeasures)[number];

/**
 * The version of the file format in which a rule last changed: what a book kept since then is still read
 * by later versions. A rule that changes takes a step for books as well.
 */
export const townRuleVersion = 7;
