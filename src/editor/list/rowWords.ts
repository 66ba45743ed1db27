import { formatAzimuth } from '../../units/azimuth.ts';
import { compassName } from '../../units/compassName.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import type { Radians } from '../../units/radians.ts';
import { phrase, sentenceCase } from '../../phrases/phrase.ts';

/** A direction as one says it: the nearest of the eight winds, and degrees clockwise from north. */
export const wayWords = (bearing: Radians): string =>
  phrase`going ${compassName(bearing)}, ${formatAzimuth(bearing)}°`;

/** A point of the ground, in inches, as its ways from the origin: `12'-0" east, 3'-6" south`. */
export const placeWords = ({ x, y }: { x: number; y: number }, style: LengthStyle): string => {
  const write = (way: number): string => formatLength(inches(Math.abs(way)), style);
  const [along, up] = [write(x), write(y)];
  if (x < 0) return y < 0 ? phrase`${along} west, ${up} south` : phrase`${along} west, ${up} north`;
  return y < 0 ? phrase`${along} east, ${up} south` : phrase`${along} east, ${up} north`;
};

/** `1 leg`, `2 legs`. */
export const manyLegs = (count: number): string =>
  count === 1 ? phrase`1 leg` : phrase`${count} legs`;

/** A text as it begins a line. */
export const capital = sentenceCase;
