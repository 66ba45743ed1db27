import { isLanguage, type Language } from '../phrases/languages.ts';

const flag = '--language';

/**
 * The language that a command line asks for, before it is read as a whole; English where it asks for none or
 * for one that there is not, which the verb then refuses in one line.
 */
export const languageIn = (args: readonly string[]): Language => {
  const end = args.indexOf('--');
  const words = end < 0 ? args : args.slice(0, end);
  const at = words.findIndex((word) => word === flag || word.startsWith(`${flag}=`));
  const word = words[at];
  const asked = word === flag ? words[at + 1] : word?.slice(flag.length + 1);
  const code = asked?.toLowerCase();
  return isLanguage(code) ? code : 'en';
};
