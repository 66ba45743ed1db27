import { phrase } from '../../phrases/phrase.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { quotedText } from '../../units/quotedText.ts';

/** How many lengths lie in the yard, as it is typed: a whole number from 1 to 1000, or the one line why not. */
export const countIn = (text: string): Parsed<number> => {
  const bare = text.trim();
  const count = /^\d{1,4}$/.test(bare) ? Number(bare) : 0;
  return count >= 1 && count <= 1000
    ? read(count)
    : unread(phrase`How many ${quotedText(text)}: expected a whole number from 1 to 1000`);
};
