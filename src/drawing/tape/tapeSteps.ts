import { isMetric } from '../../units/isMetric.ts';
import type { LengthSystem } from '../../units/lengthStyle.ts';

/** How a tape is divided: ground inches from tick to tick, and what a large tick is called. */
export interface TapeSteps {
  readonly small: number;
  readonly large: number;
  readonly write: (reading: number) => string;
}

/** Feet, or metres, that a large tick may stand apart, with the small ticks between. */
const steps: readonly (readonly [large: number, small: number])[] = [
  [1, 0.25],
  [2, 0.5],
  [5, 1],
  [10, 2],
  [20, 5],
  [50, 10],
  [100, 20],
  [200, 50],
  [500, 100],
  [1000, 200],
  [2000, 500],
  [5000, 1000],
];

/** Room that the number of a large tick needs, paper inches. */
const roomForNumber = 0.5;

const foot = 12;
const metre = 1 / 0.0254;

/** The finest division whose numbers do not crowd at a scale of paper inches for a ground inch. */
export const tapeSteps = (scale: number, system: LengthSystem): TapeSteps => {
  const metric = isMetric(system);
  const unit = metric ? metre : foot;
  const [large, small] = steps.find(([apart]) => apart * unit * scale >= roomForNumber) ??
    steps.at(-1) ?? [1, 1];
  return {
    small: small * unit,
    large: large * unit,
    write: (reading) => `${Math.round(reading / unit)}${metric ? ' m' : "'"}`,
  };
};
