import { z } from './z.ts';
import { length, remark, within } from './quantities.ts';
import type { Frozen } from './frozen.ts';

/** What makes the work on a site more than setting fence: what the person saw who was there. */
export const workSchema = z.strictObject({
  /** Old fence to be taken out and hauled away, inches. */
  tearOut: length,
  /** The share of holes that are dug in rock, 0 to 1. */
  rock: within(0, 1),
  /** How much longer everything takes for want of access, 0 to 4: 0.25 is a quarter more. */
  access: within(0, 4),
  remark,
});

export type Work = Frozen<z.infer<typeof workSchema>>;

export const plainWork: Work = { tearOut: 0 as Work['tearOut'], rock: 0, access: 0, remark: '' };
