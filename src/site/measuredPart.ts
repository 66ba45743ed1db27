import { inches, type Inches } from '../units/inches.ts';
import type { Hardware } from './hardware.ts';

/**
 * A part with what was read off each one on order, in inches, and the day. A hinge takes from the
 * smallest to the largest reading and is planned at the largest: an opening too narrow cannot be
 * mended, a little wide is taken up by the catch. A latch catches from the smallest to the largest
 * and keeps its planned gap as near as that allows. Null for no reading.
 */
export const measuredPart = (
  part: Hardware,
  readings: readonly Inches[],
  on: string,
): Hardware | null => {
  const sorted = readings.toSorted((a, b) => a - b);
  const [low, high] = [sorted[0], sorted.at(-1)];
  if (low === undefined || high === undefined) return null;
  const planned =
    part.kind === 'hinge' ? high : inches(Math.min(high, Math.max(low, part.takes.planned)));
  return { ...part, takes: { low, planned, high }, readings: sorted, from: 'measured', on };
};
