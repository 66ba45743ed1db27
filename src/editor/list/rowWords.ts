import { formatAzimuth } from '../../units/azimuth.ts';
import { compassWord } from '../../units/compassWord.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import type { Radians } from '../../units/radians.ts';

/** A direction as one says it: the nearest of the eight winds, and degrees clockwise from north. */
export const wayWords = (bearing: Radians): string =>
  `going ${compassWord(bearing)}, ${formatAzimuth(bearing)}°`;

/** A point of the ground, in inches, as its ways from the origin: `12'-0" east, 3'-6" south`. */
export const placeWords = ({ x, y }: { x: number; y: number }, style: LengthStyle): string => {
  const far = (way: number): string => formatLength(inches(Math.abs(way)), style);
  return `${far(x)} ${x < 0 ? 'west' : 'east'}, ${far(y)} ${y < 0 ? 'south' : 'north'}`;
};

/** `1 leg`, `2 legs`. */
export const many = (count: number, one: string): string =>
  `${count} ${one}${count === 1 ? '' : 's'}`;

/** A text as it begins a line. */
export const capital = (text: string): string =>
  `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;
