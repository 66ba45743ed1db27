import type { Language } from '../../phrases/languages.ts';
import { phrase } from '../../phrases/phrase.ts';
import type { Bench } from '../bench.ts';
import { isHalfDrawn } from '../isHalfDrawn.ts';
import { chooseLanguage } from './screenLanguage.ts';

/** Whether the device has all that there is: the job with its pictures, and the books. */
const allKept = async ({ site, jobs, keepBooks }: Bench): Promise<boolean> => {
  await jobs.keeper.now();
  const booksKept = await keepBooks();
  const { history, drawn } = site.getState();
  const pictures = jobs.bytes.has(drawn(history.present.site));
  return booksKept && pictures && jobs.keeper.state.getState().all;
};

/**
 * Loads the page anew in another language, once the device has all that is on it. Null where it does, else
 * the one line that says why it does not.
 */
export const speakAnew = async (bench: Bench, language: Language): Promise<string | null> => {
  if (isHalfDrawn(bench)) return phrase`Finish the piece first; the language is as it was.`;
  if (!(await allKept(bench)))
    return phrase`Not all of this is kept on the device: save a file of it first. The language is as it was.`;
  // a hand may have begun something meanwhile
  if (isHalfDrawn(bench)) return phrase`Finish the piece first; the language is as it was.`;
  if (!chooseLanguage(language)) return phrase`This device does not keep a choice of language.`;
  window.location.reload();
  return null;
};
