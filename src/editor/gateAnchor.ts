import type { Gate } from '../site/gate.ts';
import type { LengthSystem } from '../units/lengthStyle.ts';
import { inches } from '../units/inches.ts';
import type { Inches } from '../units/inches.ts';
import { handStep } from './handStep.ts';

/** Where the hand wants a gate on a leg, in inches along it. */
export interface GateWish {
  /** Of the leg, between its marks. */
  readonly length: Inches;
  /** Where the middle of the opening is wanted, from the start of the leg. */
  readonly station: Inches;
  /** Centre to centre of the two gate posts. */
  readonly span: Inches;
  /** How near an end or the middle is drawn to. */
  readonly reach: Inches;
  readonly system: LengthSystem;
}

type Anchor = Gate['anchor'];

const clamp = (value: number, low: number, high: number): number =>
  Math.min(high, Math.max(low, value));

/** A distance from an end: 0 within reach of it, else in whole steps, with room for the gate. */
const offEnd = (raw: number, { length, span, reach, system }: GateWish): Inches => {
  if (raw <= reach) return inches(0);
  const step = handStep[system];
  return inches(clamp(Math.round(raw / step) * step, 0, Math.max(0, length - span)));
};

const offMiddle = (raw: number, { length, span, reach, system }: GateWish): Inches => {
  if (Math.abs(raw) <= reach) return inches(0);
  const [step, room] = [handStep[system], Math.max(0, (length - span) / 2)];
  // adding 0 turns a negative zero round
  return inches(clamp(Math.round(raw / step) * step, -room, room) + 0);
};

/** The anchor nearest to the wish, measured from the end of the leg that is given. */
export const anchorFrom = (from: Anchor['from'], wish: GateWish): Anchor => {
  const { length, station, span } = wish;
  if (from === 'start') return { from, offset: offEnd(station - span / 2, wish) };
  if (from === 'end') return { from, offset: offEnd(length - station - span / 2, wish) };
  return { from, offset: offMiddle(station - length / 2, wish) };
};

/**
 * The anchor that a hand means: centred within reach of the middle of the leg, else measured from
 * the nearer end. A gate too long for its leg is centred, so that both ends show what is missing.
 */
export const anchorNear = (wish: GateWish): Anchor => {
  const { length, station, span, reach } = wish;
  const off = station - length / 2;
  if (Math.abs(off) <= reach || span > length) return { from: 'middle', offset: inches(0) };
  return anchorFrom(off < 0 ? 'start' : 'end', wish);
};
