import { isLanguage } from '../phrases/languages.ts';
import { speak } from '../phrases/speak.ts';

/**
 * In a worker: speaks the language that it is named for, then loads what it works by, since texts of
 * tables are made when they are loaded. Rejects where a part of either cannot be had; then the worker
 * fails, which whoever started it hears.
 */
export const speakNamed = <Part>(load: () => Promise<Part>): Promise<Part> => {
  const loaded = speak(isLanguage(self.name) ? self.name : 'en').then(load);
  loaded.catch((error: unknown) =>
    // out of the promise: an error of the worker itself
    setTimeout(() => {
      throw error;
    }),
  );
  return loaded;
};
