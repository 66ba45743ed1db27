import { bearing } from '../geometry/bearing.ts';
import { distance } from '../geometry/distance.ts';
import { midpoint } from '../geometry/midpoint.ts';
import { spot } from '../geometry/tolerance.ts';
import type { SitePoint } from '../geometry/point.ts';
import type { Primitive } from '../drawing/primitive.ts';
import { formatLength } from '../units/formatLength.ts';
import { inches } from '../units/inches.ts';
import type { LengthStyle } from '../units/lengthStyle.ts';
import { radians } from '../units/radians.ts';
import type { Radians } from '../units/radians.ts';

/** The direction of letters along a line, turned so that they are read from below. */
export const upright = (angle: Radians): Radians => {
  const quarter = Math.PI / 2;
  if (angle > quarter) return radians(angle - Math.PI);
  return radians(angle <= -quarter ? angle + Math.PI : angle);
};

/** The length of a piece that is being drawn, written along its middle; nothing for none. */
export const ghostLength = (from: SitePoint, to: SitePoint, style: LengthStyle): Primitive[] => {
  const length = distance(from, to);
  if (length < spot) return [];
  return [
    {
      kind: 'text',
      at: midpoint(from, to),
      text: formatLength(inches(length), style),
      size: 0.18,
      rise: 0.08,
      angle: upright(bearing(from, to)),
      ink: 'text',
      weight: 'bold',
    },
  ];
};

/** A mark that is not yet in the document. */
export const ghostMark = (at: SitePoint): Primitive => ({
  kind: 'circle',
  centre: at,
  radius: 0,
  least: 0.05,
  pen: 'ghost',
  ink: 'paper',
});
