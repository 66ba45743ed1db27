import { read, unread, type Parsed } from '../units/parsed.ts';
import { phrase } from '../phrases/phrase.ts';

/** More than any file of a yard has. */
export const mostBytes = 64 * 1024 * 1024;

/**
 * The bytes of a file as text: UTF-8, UTF-16 that says so, or the letters of Western Europe
 * of older files. Unread with one
 * line for what is no text: bytes of zero stand in none.
 */
export const fileText = (bytes: Uint8Array): Parsed<string> => {
  if (bytes.length > mostBytes)
    return unread(phrase`too large: expected at most ${mostBytes / 2 ** 20} MB`);
  if (bytes.length === 0) return unread(phrase`expected text, found an empty file`);
  if (bytes[0] === 0xff && bytes[1] === 0xfe)
    return read(new TextDecoder('utf-16le').decode(bytes));
  if (bytes.includes(0)) return unread(phrase`expected text, found something else`);
  try {
    return read(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return read(new TextDecoder('windows-1252').decode(bytes));
  }
};
