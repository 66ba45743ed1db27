import { inches, type Inches } from '../../units/inches.ts';

/** Contour intervals that read well, inches: 1, 2, 3 and 6 in, then 1, 2, 5, 10, 25 and 50 ft. */
export const footIntervals: readonly Inches[] = [1, 2, 3, 6, 12, 24, 60, 120, 300, 600].map(inches);

/** The same for a metric site: 25 mm to 10 m, in inches. */
export const metricIntervals: readonly Inches[] = [
  25, 50, 100, 200, 500, 1000, 2000, 5000, 10_000,
].map((mm) => inches(mm / 25.4));

/** More lines than this crowd a yard's plan; ours, no published source. */
const mostLines = 12;

/**
 * The smallest of some rising intervals that gives ground of a relief (highest less lowest, inches)
 * no more than twelve lines; a multiple of the largest where none does.
 */
export const contourInterval = (relief: Inches, intervals: readonly Inches[]): Inches => {
  const enough = intervals.find((interval) => relief / interval <= mostLines);
  const largest = intervals.at(-1) ?? inches(12);
  return enough ?? inches(largest * Math.ceil(relief / (largest * mostLines)));
};
