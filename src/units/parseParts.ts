import { read, unread, type Parsed } from './parsed.ts';
import { quotedText } from './quotedText.ts';
import { phrase } from '../phrases/phrase.ts';

const form = /^(?:1 ?(?::|in|\/) ?)?(\d{1,3}(?:,\d{3})+|\d{1,7})$/;

/** Reads the n of a precision of 1:n, one or more: `5000`, `5,000`, `1:5000`, `1 in 5000`. */
export const parseParts = (text: string): Parsed<number> => {
  const parts = Number(form.exec(text.trim())?.[1]?.replaceAll(',', ''));
  if (parts >= 1 && parts < 1e7) return read(parts);
  return unread(
    phrase`${quotedText(text)} is not a precision: expected the n of 1:n, such as 5000`,
  );
};
