import { phrase } from '../phrases/phrase.ts';

const longest = 40;
/** The longest that those characters may be once control characters are written out, and how many are left of them then. */
const [mostWritten, fewer] = [90, 14];

/**
 * A value as one line may quote it: text in quotation marks with control characters written out,
 * cut after 40 characters, after 14 where most of it is control characters; numbers as they are; a list or an object by its kind only.
 */
export const quoted = (value: unknown): string => {
  if (value === undefined) return phrase`nothing`;
  if (Array.isArray(value)) return phrase`a list`;
  if (typeof value === 'object' && value !== null) return phrase`an object`;
  if (typeof value !== 'string') return shortened(String(value));
  // cut before escaping, so that no escape is cut in half
  const written = JSON.stringify(shortened(value));
  const line = written.length > mostWritten ? JSON.stringify(shortened(value, fewer)) : written;
  return line.replace(/[\u007f-\u009f\u2028\u2029]/g, '?');
};

const shortened = (text: string, most = longest): string =>
  text.length <= most ? text : `${text.slice(0, most - 1)}…`;
