import type { Inches } from '../../units/inches.ts';

/** One line of level notes. Rod readings and heights in inches; null for what was not written. */
export interface LevelRow {
  readonly point: string;
  /** Read on a point of known height, to find that of the instrument. */
  readonly backsight: Inches | null;
  /** Read on a point that nothing else is read from. */
  readonly intermediate: Inches | null;
  /** Read on the last point of a setup: a turning point, or the end. */
  readonly foresight: Inches | null;
  /** The height of a benchmark above the datum; only of the first and the last row. */
  readonly known: Inches | null;
  /** How far the sights went from the turning point before to this one, in any one unit. */
  readonly distance: number | null;
}
