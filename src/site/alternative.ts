import { z } from './z.ts';
import { specId } from './ids.ts';
import { label } from './quantities.ts';
import type { Frozen } from './frozen.ts';

/** The same yard built otherwise, for a customer to choose: each build of the plan by another. */
export const alternativeSchema = z.strictObject({
  label: label.min(1),
  order: z.string().regex(/^[0-9A-Za-z]{1,60}$/),
  /** What takes the place of each build; builds that are not named stay. */
  instead: z.record(specId, specId),
});

export type Alternative = Frozen<z.infer<typeof alternativeSchema>>;
