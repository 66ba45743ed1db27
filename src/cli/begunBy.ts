import { phrase } from '../phrases/phrase.ts';
import { read, unread, type Parsed } from '../units/parsed.ts';
import { quotedText } from '../units/quotedText.ts';
import { languageCodes, languageOption } from './languageOption.ts';

const flag = `--${languageOption.name}`;

/** What a command line says before its verb, and the verb with all that follows. */
export interface Begun {
  /** The value of a `--language` that stands before the verb; null where none does. */
  readonly asked: string | null;
  readonly rest: readonly string[];
}

/** Takes a `--language` off the front of a command line; one line for one without a language that there is. */
export const begunBy = (args: readonly string[]): Parsed<Begun> => {
  const [first = '', next = ''] = args;
  if (first !== flag && !first.startsWith(`${flag}=`)) return read({ asked: null, rest: args });
  const joined = first !== flag;
  const asked = joined ? first.slice(flag.length + 1) : next;
  const choices = languageCodes.join(', ');
  if (asked === '' || asked.startsWith('--'))
    return unread(phrase`lath: ${flag} has no value: expected one of ${choices}`);
  if (!languageCodes.some((code) => code === asked.toLowerCase()))
    return unread(phrase`${flag}: ${quotedText(asked)}: expected one of ${choices}`);
  return read({ asked, rest: args.slice(joined ? 1 : 2) });
};
