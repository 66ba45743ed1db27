import { bearing } from '../../geometry/bearing.ts';
import { distance } from '../../geometry/distance.ts';
import { midpoint } from '../../geometry/midpoint.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { edges } from '../../geometry/polygon.ts';
import { signedArea } from '../../geometry/signedArea.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import type { Primitive } from '../primitive.ts';
import { phrase } from '../../phrases/phrase.ts';

/** The length of every side of a closed shape, along the side and inside it; `name` is the shape's. */
export const edgeLabels = (
  name: string,
  corners: readonly SitePoint[],
  style: LengthStyle,
): readonly Primitive[] => {
  const inward = signedArea(corners) < 0 ? -1 : 1;
  return edges(corners)
    .filter(({ start, end }) => distance(start, end) > 0)
    .map(({ start, end }) => {
      const text = formatLength(inches(distance(start, end)), style);
      return {
        kind: 'text',
        at: midpoint(start, end),
        text,
        size: 0.141,
        rise: inward * 0.05,
        angle: bearing(start, end),
        ink: 'dimension',
        weight: 'regular',
        far: 'leave out',
        name: phrase`${name} side ${text}`,
      };
    });
};
