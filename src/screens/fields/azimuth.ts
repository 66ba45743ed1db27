import { fromDegrees, radians, toDegrees, type Radians } from '../../units/radians.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';

const whole = 2 * Math.PI;

/** An angle counter-clockwise from east as degrees clockwise from north, `0` up to `359.9`. */
export const formatAzimuth = (angle: Radians): string => {
  const degrees = toDegrees(radians((((Math.PI / 2 - angle) % whole) + whole) % whole));
  return String(Number(degrees.toFixed(1)) % 360);
};

/**
 * Reads degrees clockwise from north (any whole turns of them, either sign, with or without a
 * degree sign) as an angle counter-clockwise from east, from 0 to under a whole turn.
 */
export const parseAzimuth = (text: string): Parsed<Radians> => {
  const found = /^\s*([+-]?(?:\d+(?:\.\d*)?|\.\d+))\s*(?:°|deg|degrees)?\s*$/.exec(text);
  const degrees = Number(found?.[1] ?? Number.NaN);
  if (!Number.isFinite(degrees)) {
    return unread(`“${text.trim().slice(0, 40)}” is not a direction: expected degrees such as 90`);
  }
  return read(fromDegrees((((90 - degrees) % 360) + 360) % 360));
};
