import { z } from './z.ts';
import { markId } from './ids.ts';
import { angle, bearing, coordinate, label, positiveLength, signedLength } from './quantities.ts';
import type { Frozen } from './frozen.ts';

/** One standard deviation of what was observed; null for what the site trusts its kind by. */
const lengthTrust = positiveLength.nullable();
const angleTrust = angle.nullable();

/** A measured distance between two marks, in inches, level from one to the other. */
const tape = z.strictObject({
  kind: z.literal('tape'),
  from: markId,
  to: markId,
  length: positiveLength,
  trust: lengthTrust,
  label,
});

/** The corner at a mark, between the ways to two others, is square. */
const square = z.strictObject({
  kind: z.literal('square'),
  at: markId,
  from: markId,
  to: markId,
  trust: angleTrust,
  label,
});

/** A mark stands in line with two others. */
const straight = z.strictObject({
  kind: z.literal('straight'),
  at: markId,
  from: markId,
  to: markId,
  trust: lengthTrust,
  label,
});

/** How far a mark stands square off the line through two others, inches; left of the way above zero. */
const offset = z.strictObject({
  kind: z.literal('offset'),
  at: markId,
  from: markId,
  to: markId,
  distance: signedLength,
  trust: lengthTrust,
  label,
});

/** Two marks stand equally far off the line through two others, on one side of it. */
const parallel = z.strictObject({
  kind: z.literal('parallel'),
  at: markId,
  other: markId,
  from: markId,
  to: markId,
  trust: lengthTrust,
  label,
});

/** The way from one mark to another, in radians counter-clockwise from east (the x axis). */
const sighted = z.strictObject({
  kind: z.literal('bearing'),
  from: markId,
  to: markId,
  bearing,
  trust: angleTrust,
  label,
});

/**
 * Roughly where a mark is, by satellites: inches on the site. `accuracy` is one standard deviation,
 * east and north alike; `engine/walk/radius95.ts` has the radius that is told of it.
 */
const fix = z.strictObject({
  kind: z.literal('fix'),
  mark: markId,
  x: coordinate,
  y: coordinate,
  accuracy: positiveLength,
  label,
});

/** What was observed of where marks stand to each other. It moves them; nothing else does. */
export const observationSchema = z.discriminatedUnion('kind', [
  tape,
  square,
  straight,
  offset,
  parallel,
  sighted,
  fix,
]);

export type Observation = Frozen<z.infer<typeof observationSchema>>;
export type ObservationKind = Observation['kind'];
export type ObservationOf<Kind extends ObservationKind> = Extract<Observation, { kind: Kind }>;
