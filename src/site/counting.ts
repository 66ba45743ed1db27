import { z } from './z.ts';
import { inches } from '../units/inches.ts';
import { length, positiveLength, within } from './quantities.ts';
import type { Frozen } from './frozen.ts';

/** How a company counts, cuts and orders what goes on the truck. Lengths in inches. */
export const countingSchema = z.strictObject({
  /** Tension bands up a bar, no farther apart; from the edges of the fabric to the outermost. */
  bandSpacing: positiveLength,
  bandInset: length,
  /** Ties up a line post and along a rail, hog rings along a tension wire: no farther apart. */
  postTies: positiveLength,
  railTies: positiveLength,
  hogRings: positiveLength,
  /** What a tension bar is shorter than its fabric. */
  barShort: length,
  /** A stick of rail, and how two are joined. */
  railStick: positiveLength,
  railJoint: z.enum(['swaged', 'sleeve']),
  /** A stick that posts are cut from; null where they are bought cut. */
  postStick: positiveLength.nullable(),
  /** A length of lumber that rails of boards are cut from. */
  lumber: positiveLength,
  roll: positiveLength,
  /** What a cut takes. */
  kerf: length,
  /** The bag of dry concrete, pounds. */
  bag: z.union([z.literal(40), z.literal(50), z.literal(60), z.literal(80)]),
  /** Gravel under every post in the ground, so deep; 0 for none. */
  gravel: length,
  /** How many a rule takes of its item, by the rule, where the company takes another number; 0 for none. */
  times: z.record(z.string().max(60), within(0, 1000)),
  /** So much of what is counted on top, by the rule, 0 to 1, where the company takes another share. */
  spares: z.record(z.string().max(60), within(0, 1)),
});

export type Counting = Frozen<z.infer<typeof countingSchema>>;

/** How the trade counts where a company says nothing else; who says so stands in `trade/countingSources.ts`. */
export const usualCounting: Counting = {
  bandSpacing: inches(15),
  bandInset: inches(9),
  postTies: inches(15),
  railTies: inches(24),
  hogRings: inches(24),
  barShort: inches(2),
  railStick: inches(252),
  railJoint: 'swaged',
  postStick: null,
  lumber: inches(192),
  roll: inches(600),
  kerf: inches(1 / 8),
  bag: 80,
  gravel: inches(0),
  times: {},
  spares: {},
};
