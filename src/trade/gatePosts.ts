import { inches } from '../units/inches.ts';
import { schedule40 } from './schedule40.ts';
import type { FencePipe } from './pipes.ts';
import type { Source } from './source.ts';
import type { Inches } from '../units/inches.ts';

/** The post that a swing leaf hangs from, and its footing. */
export interface GatePostSize {
  /** The leaf is wider than `over` and at most `upTo`. */
  readonly over: Inches;
  readonly upTo: Inches;
  /** The table gives the outside diameter; the wall is that of regular pipe. */
  readonly post: FencePipe;
  readonly footingDiameter: Inches;
  /** The footing is at least this deep. */
  readonly footingDepth: Inches;
  readonly source: Source;
}

const handbook: Source = {
  text: 'MIL-HDBK-1013/10 (14 May 1993), Table 1',
  status: 'published',
};

const feet = (value: number): Inches => inches(12 * value);

const row = (over: number, upTo: number, od: number, footing: number): GatePostSize => ({
  over: feet(over),
  upTo: feet(upTo),
  post: schedule40(od),
  footingDiameter: inches(footing),
  footingDepth: feet(3),
  source: handbook,
});

/** The whole table: leaf over and up to in feet, post outside diameter and footing diameter in inches. */
export const gatePostSizes: readonly GatePostSize[] = [
  row(0, 6, 2.875, 18),
  row(6, 12, 4, 24),
  row(12, 18, 6.625, 36),
  row(18, 24, 8.625, 40),
];

/**
 * The row for the width of one leaf (not of the opening) in inches; a leaf of exactly 6 ft takes
 * the row that ends there. Null over 24 ft, where the table ends.
 */
export const gatePostFor = (leafWidth: Inches): GatePostSize | null =>
  gatePostSizes.find(({ upTo }) => leafWidth <= upTo) ?? null;
