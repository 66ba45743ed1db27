import type { Language } from './languages.ts';
import { speakBy } from './phrase.ts';

type Catalogue = Readonly<Record<string, string>>;

/** The catalogue of a language: a file for each folder of the code. English is what the code says. */
const catalogues: Readonly<Record<Exclude<Language, 'en'>, () => Promise<Catalogue>>> = {
  es: async () => (await import('./es.ts')).spanish,
};

let spoken: Language = 'en';

/** The language that is spoken. */
export const language = (): Language => spoken;

/**
 * Speaks a language from now on. To be called before the rest of the program is loaded, since texts of
 * tables are made when they are. Rejects where the catalogue cannot be fetched; then English is spoken.
 */
export const speak = async (next: Language): Promise<void> => {
  const catalogue = next === 'en' ? null : await catalogues[next]();
  speakBy(
    catalogue === null
      ? null
      : (key) => (Object.hasOwn(catalogue, key) ? catalogue[key] : undefined),
  );
  spoken = next;
};
