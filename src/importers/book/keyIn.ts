import { quotedText } from '../../units/quotedText.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { phrase } from '../../phrases/phrase.ts';

/** What a row's Key names: null for none. Unread with one line where that is no key. */
export const keyIn = <Id extends string>(
  cell: string | undefined,
  idOf: (key: string) => Id | null,
): Parsed<Id | null> => {
  const key = cell?.trim() ?? '';
  if (key === '') return read(null);
  const id = idOf(key);
  if (id !== null) return read(id);
  return unread(
    phrase`Key: expected up to 40 letters, digits and hyphens, found ${quotedText(key)}`,
  );
};
