import { read, unread, type Parsed } from '../units/parsed.ts';
import { quotedText } from '../units/quotedText.ts';
import type { Verb } from './verb.ts';
import { phrase } from '../phrases/phrase.ts';

/** The verb of a table that bears a name; one line names them all where none does. */
export const verbNamed = (table: readonly Verb[], name: string): Parsed<Verb> => {
  const verb = table.find((one) => one.name === name);
  if (verb !== undefined) return read(verb);
  const known = table.map((one) => one.name).join(', ');
  return unread(phrase`lath: there is no verb ${quotedText(name)}: expected one of ${known}`);
};
