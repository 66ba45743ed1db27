import { isLanguage, type Language } from '../../phrases/languages.ts';

/** Where the device keeps the choice: needed before anything else is loaded, so apart from all that is kept. */
const place = 'lathline language';

const chosenBefore = (): Language | null => {
  try {
    const kept = window.localStorage.getItem(place);
    return isLanguage(kept) ? kept : null;
  } catch {
    // a device that keeps nothing
    return null;
  }
};

/** The first of some languages, by tags such as `es-MX`, that the program speaks; null where it speaks none. */
export const firstSpoken = (tags: readonly string[]): Language | null =>
  tags.map((tag) => tag.toLowerCase().split('-')[0]).find(isLanguage) ?? null;

/**
 * The language of the screen: what was chosen on this device, else the first that the browser says its
 * person reads, else English.
 */
export const screenLanguage = (): Language =>
  chosenBefore() ?? firstSpoken(navigator.languages) ?? 'en';

/** Keeps the choice of a language for the next loads of the page; false where the device keeps nothing. */
export const chooseLanguage = (language: Language): boolean => {
  try {
    window.localStorage.setItem(place, language);
    return true;
  } catch {
    return false;
  }
};
