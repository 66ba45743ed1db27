import { toDegrees, type Radians } from './radians.ts';

/**
 * A finite angle as degrees with at most one decimal: `45°`, `22.5°`, `-30°`. Rounded half away
 * from zero; whole turns are kept; zero has no sign.
 */
export const formatAngle = (angle: Radians): string => {
  // a few last bits are forgiven: 22.25° in radians may come back a hair under its half
  const tenths = Math.round(Math.abs(toDegrees(angle)) * 10 * (1 + 2 ** -50));
  return `${angle < 0 && tenths > 0 ? '-' : ''}${tenths / 10}°`;
};
