import type { PlaceOnEarth } from '../../geometry/localPlane.ts';
import { quoted } from '../../site/quoted.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { phrase } from '../../phrases/phrase.ts';

/** A position of a GeoJSON file: where on earth, and its height in metres where it has one. */
export interface Position extends PlaceOnEarth {
  readonly height: number | null;
}

const expected = phrase`expected longitude (-180 to 180), then latitude (-90 to 90)`;

/** Lists in one another that a line quotes, and how many of a list. */
const [deepest, most] = [3, 12];

/** A list with what is too deep or too many in it as an ellipsis, and so what is in an object. */
const brief = (value: unknown, depth = 0): string => {
  if (value === undefined) return phrase`nothing`;
  if (typeof value === 'string') return quoted(value);
  if (typeof value !== 'object' || value === null) return String(value);
  if (!Array.isArray(value)) return Object.keys(value).length === 0 ? '{}' : '{…}';
  if (value.length > 0 && depth >= deepest) return '[…]';
  const some = value.slice(0, most).map((one: unknown) => brief(one, depth + 1));
  return `[${some.join(',')}${value.length > most ? ',…' : ''}]`;
};

/** A value as one line can quote it: numbers and short lists of them as they are, all else by what it is. */
export const shown = (value: unknown): string => {
  const text = brief(value);
  return text.length > 42 ? `${text.slice(0, 39)}…` : text;
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
    return unread(phrase`${expected}, found ${shown(value)}`);
  }
  if (Math.abs(longitude) <= 180 && Math.abs(latitude) <= 90) {
    return read({ longitude, latitude, height: typeof height === 'number' ? height : null });
  }
  const swapped = Math.abs(longitude) <= 90 && Math.abs(latitude) <= 180;
  const hint = swapped
    ? phrase`: latitude and longitude may be the wrong way round`
    : phrase`: these may be feet or metres of a map`;
  return unread(phrase`${expected}, found ${shown(value)}${hint}`);
};
