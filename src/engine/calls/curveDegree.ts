import { formatDegrees } from '../../units/formatDegrees.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import type { Radians } from '../../units/radians.ts';
import { phrase } from '../../phrases/phrase.ts';

/** How sharp a curve is, as `5° curve`: how far 100 ft of it turn. */
export interface CurveDegree {
  readonly turn: Radians;
  /** Whether the 100 ft are of its arc, as of a road, or a chord of it, as of a railroad. */
  readonly by: 'arc' | 'chord';
}

/**
 * The radius of a degree of curve: 100 ft / D by the arc, D in radians, which is 5729.578 ft / D in
 * degrees, and 50 ft / sin D/2 by the chord (both definitions: “Degree of curvature”, Wikipedia).
 */
export const radiusOf = ({ turn, by }: CurveDegree): Inches =>
  inches(by === 'arc' ? 1200 / turn : 600 / Math.sin(turn / 2));

const hundreds = { arc: phrase`100 ft of arc`, chord: phrase`a chord of 100 ft` } as const;

/** By which definition a degree of curve was taken and what the other makes of it; it lacks its subject. */
export const degreeText = (degree: CurveDegree, style: LengthStyle): string => {
  const other = degree.by === 'arc' ? 'chord' : 'arc';
  const write = (by: CurveDegree['by']): string =>
    phrase`${hundreds[by]}: radius ${formatLength(radiusOf({ ...degree, by }), style)}`;
  return phrase`is a ${formatDegrees(degree.turn)} curve by ${write(degree.by)}; not by ${write(other)}`;
};
