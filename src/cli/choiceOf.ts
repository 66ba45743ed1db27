import { read, unread, type Parsed } from '../units/parsed.ts';
import { quotedText } from '../units/quotedText.ts';
import { valueOf, type Call } from './call.ts';
import { phrase } from '../phrases/phrase.ts';

/** One of several words, in capitals or not; null where the option was not given. */
export const choiceOf = <T extends string>(
  call: Call,
  name: string,
  choices: readonly T[],
): Parsed<T | null> => {
  const text = valueOf(call, name);
  if (text === null) return read(null);
  const choice = choices.find((one) => one.toLowerCase() === text.toLowerCase());
  if (choice !== undefined) return read(choice);
  const between = choices.some((one) => one.includes(',')) ? '; ' : ', ';
  return unread(phrase`--${name}: ${quotedText(text)}: expected one of ${choices.join(between)}`);
};
