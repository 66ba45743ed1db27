import { read, unread, type Parsed } from '../units/parsed.ts';
import { phrase } from '../phrases/phrase.ts';

/** The bytes of a file as UTF-8 text in whole; a stray byte is refused, not replaced. `where` names the file. */
export const textOf = (where: string, bytes: Uint8Array): Parsed<string> => {
  try {
    return read(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return unread(phrase`${where}: it is not text: expected a file of text`);
  }
};
