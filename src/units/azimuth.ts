import { parseAngle } from './parseAngle.ts';
import { read, type Parsed } from './parsed.ts';
import { fromDegrees, radians, toDegrees, type Radians } from './radians.ts';

const whole = 2 * Math.PI;

/** An angle counter-clockwise from east as degrees clockwise from north, `0` up to `359.9`. */
export const formatAzimuth = (angle: Radians): string => {
  const degrees = toDegrees(radians((((Math.PI / 2 - angle) % whole) + whole) % whole));
  return String(Number(degrees.toFixed(1)) % 360);
};

/**
 * Reads degrees clockwise from north (any whole turns of them, either sign, as `parseAngle` reads
 * them) as an angle counter-clockwise from east, from 0 to under a whole turn.
 */
export const parseAzimuth = (text: string): Parsed<Radians> => {
  const angle = parseAngle(text);
  if (!angle.ok) return angle;
  // through degrees, so that the compass comes out exact
  return read(fromDegrees((((90 - toDegrees(angle.value)) % 360) + 360) % 360));
};
