import { phrase } from '../../phrases/phrase.ts';
import type { JobShelf } from '../../store/jobShelf.ts';
import { firstLook, type FirstLook } from './firstLook.ts';
import { openedYard, type OpenedYard } from './openedYard.ts';
import { sayFirst } from './sayFirst.ts';

/** The yard that the program opens on, and how it was looked at when it was first drawn. */
export interface Opened extends OpenedYard {
  readonly look: FirstLook | null;
}

/** How long reading may take before it is said that it does, milliseconds. Ours. */
const patience = 1500;

/** Opens and draws the yard, from which the rest of the program goes on. */
export const openFirst = async (shelf: JobShelf): Promise<Opened> => {
  const timer = setTimeout(
    () => sayFirst({ line: phrase`What is kept on this device is being read …` }),
    patience,
  );
  const opened = await openedYard(shelf);
  clearTimeout(timer);
  sayFirst(null);
  // a device that cannot draw is told so by the screen, with a key that saves the file
  return { ...opened, look: await firstLook(opened).catch(() => null) };
};
