import { phrase } from '../../phrases/phrase.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';

/** Bytes that no book reaches: a thousand entries with long remarks take less. */
const mostBytes = 8_000_000;

/** The text of a file that was chosen for the book; unread with one line where it has none. */
export const readBookFile = async (file: File): Promise<Parsed<string>> => {
  if (file.size > mostBytes) return unread(phrase`too large for a book`);
  try {
    return read(new TextDecoder('utf-8', { fatal: true }).decode(await file.arrayBuffer()));
  } catch (error) {
    if (error instanceof TypeError)
      return unread(phrase`expected text in UTF-8, found something else`);
    return unread(phrase`cannot be read from this device`);
  }
};
