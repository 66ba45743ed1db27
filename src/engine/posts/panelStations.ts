import type { Infill } from '../../site/infill.ts';
import { leastPanel } from '../../trade/leastPanel.ts';
import { inches, type Inches } from '../../units/inches.ts';

/** What a row of panels hangs between: how thick its posts are along the fence, inches. */
export interface PanelPosts {
  /** The two that stand already, the one at station 0 first. */
  readonly from: Inches;
  readonly to: Inches;
  /** Every one between. */
  readonly line: Inches;
}

/** Panels as they are hung: so wide at most, from face to face of two posts, inches. */
export interface PanelRow {
  readonly width: Inches;
  readonly last: Extract<Infill, { kind: 'panels' }>['last'];
  /** Where the tape is hooked: whole panels begin there. */
  readonly hook: 'start' | 'end';
}

/** The clear widths of the fewest panels over a length between two faces, the last one cut. */
const cutWidths = (count: number, clear: number, line: Inches, width: Inches): number[] => {
  const whole = Array.from({ length: count - 1 }, () => Number(width));
  const last = clear - whole.length * (width + line);
  if (count === 1 || last >= leastPanel.length) return [...whole, last];
  const each = (width + last) / 2;
  return [...whole.slice(1), each, each];
};

/**
 * Where line posts stand along a length between the centres of two posts so that panels of one width fit
 * from face to face: the fewest panels. Whole ones from the hook and the last one cut, but where that were
 * narrower than a foot the last two are cut alike; or all cut alike. Stations in inches from the first
 * centre, rising, ends not among them; none where one panel is enough. RangeError for a width that is not
 * above zero.
 */
export const panelStations = (
  length: Inches,
  { from, to, line }: PanelPosts,
  { width, last, hook }: PanelRow,
): Inches[] => {
  if (!(width > 0)) throw new RangeError(`panel: expected a width above zero, found ${width}`);
  const clear = length - (from + to) / 2;
  const count = Math.max(1, Math.ceil(((clear + line) / (width + line)) * (1 - 1e-9)));
  const equal = (clear - (count - 1) * line) / count;
  const told =
    last === 'all equal'
      ? Array.from({ length: count }, () => equal)
      : cutWidths(count, clear, line, width);
  const widths = hook === 'start' ? told : told.toReversed();
  const stations: Inches[] = [];
  let face = from / 2;
  for (const own of widths.slice(0, -1)) {
    stations.push(inches(face + own + line / 2));
    face += own + line;
  }
  return stations;
};
