import type { Run } from '../../engine/layout.ts';
import { inches, type Inches } from '../../units/inches.ts';

/** Where a piece of a run lies on the drawn strip: station `from` at `x`, station `to` at the far end. */
export interface TapeReach {
  readonly run: Run['id'];
  readonly from: Inches;
  readonly to: Inches;
  /** Paper inches from the left of the strip. */
  readonly x: number;
  /** Paper inches for an inch of tape. */
  readonly scale: number;
}

/** Where a station of the run stands on the strip, paper inches from its left. */
export const xAt = ({ from, x, scale }: TapeReach, station: number): number =>
  x + (station - from) * scale;

/** The station under a place on the strip, held to the part that is shown. */
export const stationAt = ({ from, to, x, scale }: TapeReach, at: number): Inches =>
  inches(Math.min(to, Math.max(from, from + (at - x) / scale)));

/** The reach that lies under a place on the strip, the nearest one beside it; null for no reaches. */
export const reachAt = (reaches: readonly TapeReach[], at: number): TapeReach | null => {
  const away = (reach: TapeReach): number => {
    const end = xAt(reach, reach.to);
    return Math.max(0, reach.x - at, at - end);
  };
  return reaches.toSorted((a, b) => away(a) - away(b))[0] ?? null;
};
