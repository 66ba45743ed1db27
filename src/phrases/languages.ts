/** The languages that the program speaks, by their codes of ISO 639-1, each called what its speakers call it. */
export const languages = { en: 'English', es: 'Español' } as const;

/** What each language calls a language: who reads none of the others finds the choice by it. */
export const languageWords = { en: 'Language', es: 'Idioma' } as const satisfies Record<
  keyof typeof languages,
  string
>;

/** The code of a language that the program speaks. */
export type Language = keyof typeof languages;

/** Whether a value is the code of a language that the program speaks. */
export const isLanguage = (value: unknown): value is Language =>
  typeof value === 'string' && Object.hasOwn(languages, value);
