import { inches, type Inches } from '../../units/inches.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { phrase } from '../../phrases/phrase.ts';

/** A position as a device tells it, in degrees (WGS 84), and the radius that holds it 95 times in 100. */
export interface Position {
  readonly latitude: number;
  readonly longitude: number;
  readonly radius: Inches;
}

/** What a browser tells of a position: degrees, and metres (W3C Geolocation). */
export interface ToldPosition {
  readonly latitude: number;
  readonly longitude: number;
  readonly accuracy: number;
}

/** Metres in an inch, exactly (international yard and pound, 1959). */
const metre = 0.0254;

/**
 * The position that a browser tells, its accuracy in inches. One line for what is no number, and for
 * places within a degree of a pole, round which no ground is laid flat.
 */
export const readPosition = ({ latitude, longitude, accuracy }: ToldPosition): Parsed<Position> => {
  if (!(Math.abs(latitude) <= 89)) {
    return unread(phrase`Latitude ${latitude}: expected degrees from -89 to 89`);
  }
  if (!(Math.abs(longitude) <= 180)) {
    return unread(phrase`Longitude ${longitude}: expected degrees from -180 to 180`);
  }
  if (!(accuracy >= 0 && accuracy < Infinity)) {
    return unread(phrase`Accuracy ${accuracy}: expected metres`);
  }
  return read({ latitude, longitude, radius: inches(accuracy / metre) });
};
