import type { PlaceOnEarth } from '../../geometry/localPlane.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';

/** A position of a GeoJSON file: where on earth, and its height in metres where it has one. */
export interface Position extends PlaceOnEarth {
  readonly height: number | null;
}

const expected = 'expected longitude (-180 to 180), then latitude (-90 to 90)';

/** A value as one line can quote it: numbers as they are, all else by what it is. */
export const shown = (value: unknown): string => {
  const text = JSON.stringify(value) ?? 'nothing';
  return text.length > 40 ? `${text.slice(0, 39)}…` : text;
};

/**
 * Reads one position (RFC 7946, 3.1.1): longitude, latitude, and a height if any. Unread with one line
 * for numbers that are no degrees, which says so where they are the other way round.
 */
export const readPosition = (value: unknown): Parsed<Position> => {
  const numbers = Array.isArray(value) ? (value as unknown[]) : [];
  const [longitude, latitude, height] = numbers;
  const all = numbers.every((one) => typeof one === 'number' && Number.isFinite(one));
  if (typeof longitude !== 'number' || typeof latitude !== 'number' || !all) {
    return unread(`${expected}, found ${shown(value)}`);
  }
  if (Math.abs(longitude) <= 180 && Math.abs(latitude) <= 90) {
    return read({ longitude, latitude, height: typeof height === 'number' ? height : null });
  }
  const swapped = Math.abs(longitude) <= 90 && Math.abs(latitude) <= 180;
  const hint = swapped
    ? ': latitude and longitude may be the wrong way round'
    : ': these may be feet or metres of a map';
  return unread(`${expected}, found ${shown(value)}${hint}`);
};
