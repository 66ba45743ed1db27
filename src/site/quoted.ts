import { phrase } from '../phrases/phrase.ts';

const longest = 40;

/**
 * A value as one line may quote it: text in quotation marks with control characters written out,
 * cut after 40 characters; numbers as they are; a list or an object by its kind only.
 */
export const quoted = (value: unknown): string => {
  if (value === undefined) return phrase`nothing`;
  if (Array.isArray(value)) return phrase`a list`;
  if (typeof value === 'object' && value !== null) return phrase`an object`;
  if (typeof value !== 'string') return shortened(String(value));
  // cut before escaping, so that no escape is cut in half
  return JSON.stringify(shortened(value)).replace(/[\u007f-\u009f\u2028\u2029]/g, '?');
};

const shortened = (text: string): string =>
  text.length <= longest ? text : `${text.slice(0, longest - 1)}…`;
