import { formatDegrees } from './formatDegrees.ts';
import { fromDegrees, toDegrees, type Radians } from './radians.ts';
import { phrase } from '../phrases/phrase.ts';

const turn = 360 * 3600;
const compass = [phrase`due north`, phrase`due east`, phrase`due south`, phrase`due west`];

/**
 * A finite direction clockwise from north as a quadrant bearing, `N 26°10'30" E`, rounded to whole
 * seconds; on the compass `due north`, `due east`, `due south` or `due west`.
 */
export const formatBearing = (azimuth: Radians): string => {
  const turned = Math.round(toDegrees(azimuth) * 3600) % turn;
  const seconds = turned < 0 ? turned + turn : turned;
  const quarter = (4 * seconds) / turn;
  const due = compass[quarter];
  if (due !== undefined) return due;
  const north = quarter < 1 || quarter > 3;
  const off = north ? Math.min(seconds, turn - seconds) : Math.abs(turn / 2 - seconds);
  return `${north ? 'N' : 'S'} ${formatDegrees(fromDegrees(off / 3600))} ${quarter < 2 ? 'E' : 'W'}`;
};
