import { plainText } from '../../../units/plainText.ts';
import { read, unread, type Parsed } from '../../../units/parsed.ts';
import { quotedText } from '../../../units/quotedText.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** A grade (rise over run) as percent with at most one decimal: `15 %`. */
export const gradeText = (ratio: number): string => `${Number((ratio * 100).toFixed(1))} %`;

/**
 * Reads percent of grade, with its sign or without, as rise over run; null for an empty text. One
 * line for what is no number from 0 to 100.
 */
export const readGrade = (text: string): Parsed<number | null> => {
  const line = plainText(text);
  if (line === '') return read(null);
  const found = /^(\d+(?:\.\d*)?|\.\d+) ?%?$/.exec(line);
  const percent = Number(found?.[1] ?? NaN);
  if (percent <= 100) return read(percent / 100);
  return unread(
    phrase`${quotedText(text)}: expected percent from 0 to 100, such as 15, or nothing`,
  );
};
