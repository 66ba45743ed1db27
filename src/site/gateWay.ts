import { z } from './z.ts';
import { angle, length, positiveLength } from './quantities.ts';
import type { Frozen } from './frozen.ts';

/** How far a leaf may be opened, radians from closed. */
const turns = angle;

/** One leaf, or two that meet: each turns on hinges. */
const swing = z.strictObject({ kind: z.literal('swing'), turns });

/** Two leaves, each latched to a stop that stands in the middle; its width in inches. */
const centreStop = z.strictObject({ kind: z.literal('centre stop'), stop: positiveLength, turns });

/**
 * One leaf, or two that meet, rolled aside on rollers without a track on the ground. Inches:
 * by how much the leaf is longer than the opening it closes (`overlap`), how much of it stays
 * behind the first roller (`counterbalance`), from centre to centre of the roller posts
 * (`rollers`), from the fence line to the roller posts (`behind`). `stores` is the end of the leg
 * towards which a single leaf rolls.
 */
const cantilever = z.strictObject({
  kind: z.literal('cantilever'),
  overlap: length,
  counterbalance: length,
  rollers: positiveLength,
  behind: length,
  stores: z.enum(['start', 'end']),
});

/** A gap that nothing closes; its clear width in inches. */
const gap = z.strictObject({ kind: z.literal('gap'), clear: positiveLength });

/** The way in which a gate closes its opening. */
export const gateWaySchema = z.discriminatedUnion('kind', [swing, centreStop, cantilever, gap]);

export type GateWay = Frozen<z.infer<typeof gateWaySchema>>;

/** How many leaves a gate of each way can have. */
export const leafCounts: Readonly<Record<GateWay['kind'], readonly number[]>> = {
  swing: [1, 2],
  'centre stop': [2],
  cantilever: [1, 2],
  gap: [0],
};
