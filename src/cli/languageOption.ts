import { languages, type Language } from '../phrases/languages.ts';
import type { Option } from './option.ts';
import { phrase } from '../phrases/phrase.ts';

/** The codes of the languages that sheets and tables can be in. */
export const languageCodes = Object.keys(languages) as readonly Language[];

/** The language of sheets and tables; it is spoken before a verb is loaded (`languageIn`). */
export const languageOption: Option = {
  name: 'language',
  value: languageCodes.join('|'),
  needed: false,
  repeats: false,
  does: phrase`the language of sheets and tables; en unless given`,
};
