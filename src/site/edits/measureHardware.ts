import type { HardwareId } from '../ids.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Site } from '../site.ts';
import { changeHardware } from './changeHardware.ts';
import { entry } from '../entry.ts';

/**
 * Puts down what was read off each part on order, in inches, and the day. A hinge takes from the
 * smallest to the largest reading and is planned at the largest: an opening too narrow cannot be
 * mended, a little wide is taken up by the catch. A latch catches from the smallest to the largest
 * and keeps its planned gap as near as that allows. RangeError for no reading and an unknown part.
 */
export const measureHardware = (
  site: Site,
  id: HardwareId,
  readings: readonly Inches[],
  on: string,
): Site => {
  const { kind, takes } = entry(site, 'hardware', id);
  const sorted = readings.toSorted((a, b) => a - b);
  const [low, high] = [sorted[0], sorted.at(-1)];
  if (low === undefined || high === undefined) {
    throw new RangeError(`hardware › ${id} › readings: expected at least one, found none`);
  }
  const planned = kind === 'hinge' ? high : inches(Math.min(high, Math.max(low, takes.planned)));
  return changeHardware(site, id, {
    takes: { low, planned, high },
    readings: sorted,
    from: 'measured',
    on,
  });
};
