import { z } from './z.ts';
import { length, within } from './quantities.ts';
import type { Frozen } from './frozen.ts';

/** What the ground is, by the classes of the building code, the strongest first. */
export const soilNames = ['bedrock', 'soft rock', 'gravel', 'sand', 'clay'] as const;

/** How open the land is, from town to water. */
export const exposureNames = ['B', 'C', 'D'] as const;

/** What the place does to a fence: its ground, frost and wind, as somebody said who knows it. */
export const conditionsSchema = z.strictObject({
  /** Null where nobody has said. */
  soil: z.enum(soilNames).nullable(),
  /** Whether half an inch of movement of a post at the ground does no harm. */
  isolated: z.boolean(),
  /** How deep the ground freezes, inches; null where nobody has said. */
  frost: length.nullable(),
  /** The basic wind speed, miles per hour, and how open the land is; null where nobody has said. */
  wind: z.strictObject({ speed: within(20, 300), exposure: z.enum(exposureNames) }).nullable(),
  /**
   * Ice that freezes on wire and pipe: how thick all round, inches, and the wind that blows while it is
   * there, miles per hour; null where nobody has said.
   */
  ice: z.strictObject({ thickness: within(0, 6), speed: within(20, 300) }).nullable(),
  /** Whether bays are as long as the build says, or no longer than its line posts bear that wind. */
  bays: z.enum(['by build', 'by wind']),
});

export type Conditions = Frozen<z.infer<typeof conditionsSchema>>;

/** Those of a place of which nobody has said anything. */
export const untoldConditions: Conditions = {
  soil: null,
  isolated: false,
  frost: null,
  wind: null,
  ice: null,
  bays: 'by build',
};
