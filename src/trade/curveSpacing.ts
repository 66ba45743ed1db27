import { inches, type Inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** Line posts on curves of a radius of at least `from` stand no farther apart than `length`; inches. */
export interface CurveSpacing {
  readonly from: Inches;
  readonly length: Inches;
}

const feet = (from: number, length: number): CurveSpacing => ({
  from: inches(12 * from),
  length: inches(12 * length),
});

/** From wide curves to tight ones; what lies below the last is as tight as that. */
const curveSpacings: readonly CurveSpacing[] = [
  feet(500, 10),
  feet(200, 8),
  feet(100, 6),
  feet(0, 5),
];

export const curveSpacingSource: Source = {
  text: phrase`Tremonton UT 3.18.010: 10 ft at 500 ft of radius and over, 8 ft from 500 to 200, 6 ft from 200 to 100, 5 ft at 100 ft and under`,
  status: 'published',
};

/** The longest bay on a curve of a radius, inches; at 100 ft itself the shorter one. */
export const curveSpacing = (radius: Inches): Inches => {
  const last = curveSpacings.at(-1)?.length ?? inches(Infinity);
  const row = curveSpacings.find(({ from }) => radius >= from);
  // the table has 100 ft in both of its last rows: the shorter bay is the one that no row forbids
  return row === undefined || radius <= (curveSpacings.at(-2)?.from ?? 0) ? last : row.length;
};
