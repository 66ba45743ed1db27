import { principalAngle } from '../../geometry/principalAngle.ts';
import { radians, type Radians } from '../../units/radians.ts';

// text that stands upright to within this is read from the right, whatever its rounding
const hair = 1e-6;

/**
 * The angle at which text along a direction is never upside down: above -90° and at most 90°, so
 * that upright text is read from the right-hand side of the sheet.
 */
export const readable = (angle: Radians): Radians => {
  const turned = principalAngle(angle);
  if (turned > Math.PI / 2 + hair) return radians(turned - Math.PI);
  return turned <= -Math.PI / 2 + hair ? radians(turned + Math.PI) : turned;
};
