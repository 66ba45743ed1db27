import { isMetric } from '../../units/isMetric.ts';
import type { LengthSystem } from '../../units/lengthStyle.ts';
import { phrase } from '../../phrases/phrase.ts';

/** A standard drawing scale: how it is written, and ground inches to one inch of paper. */
export interface Scale {
  readonly text: string;
  readonly ratio: number;
}

/**
 * Architect's scales, inches of paper to the foot. Scale-factor tables list 3/32 to 3 in, of which
 * the large ones are no use for a yard and are left out; 1/16 in, which fills the wide step to
 * 1 in = 20 ft, is drafting practice for site plans (from memory, not in those tables).
 */
const architects: readonly Scale[] = (
  [
    ['1', 1],
    ['3/4', 3 / 4],
    ['1/2', 1 / 2],
    ['3/8', 3 / 8],
    ['1/4', 1 / 4],
    ['3/16', 3 / 16],
    ['1/8', 1 / 8],
    ['3/32', 3 / 32],
    ['1/16', 1 / 16],
  ] as const
).map(([text, size]) => ({ text: phrase`${text} in = 1 ft`, ratio: 12 / size }));

/** Engineer's scales: 1 in = 10, 20, 30, 40, 50, 60 ft, and ten and a hundred times that. */
const engineers: readonly Scale[] = [1, 10, 100].flatMap((times) =>
  [10, 20, 30, 40, 50, 60].map((feet) => ({
    text: phrase`1 in = ${feet * times} ft`,
    ratio: feet * times * 12,
  })),
);

const imperial = [...architects, ...engineers].toSorted((a, b) => a.ratio - b.ratio);

/** Metric scales: 1, 2, 5 times powers of ten (ISO 5455, from memory). */
const metric: readonly Scale[] = [10, 100, 1000, 10000]
  .flatMap((power) => [1, 2, 5].map((times) => times * power))
  .map((ratio) => ({ text: `1 : ${ratio}`, ratio }));

/** The standard scales of a unit system, the largest drawing first. */
export const scalesOf = (system: LengthSystem): readonly Scale[] =>
  isMetric(system) ? metric : imperial;

/**
 * The largest standard scale at which ground of `width` by `height` inches fits into `room` (paper
 * inches); the smallest one where none does.
 */
export const fittingScale = (
  scales: readonly Scale[],
  ground: { readonly width: number; readonly height: number },
  room: { readonly width: number; readonly height: number },
): Scale => {
  const fits = ({ ratio }: Scale): boolean =>
    ground.width / ratio <= room.width && ground.height / ratio <= room.height;
  const scale = scales.find(fits) ?? scales.at(-1);
  if (scale === undefined) throw new RangeError('expected at least one scale to choose from');
  return scale;
};
