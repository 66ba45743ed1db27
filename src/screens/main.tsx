import '@fontsource/barlow/latin-400.css';
import '@fontsource/barlow/latin-500.css';
import '@fontsource/barlow/latin-600.css';
import '@fontsource/barlow/latin-700.css';
import './theme.css';
import './first/first.css';
import './frame/frame.css';
import './fields/fields.css';
import './page.css';
import { phrase } from '../phrases/phrase.ts';
import { language, speak } from '../phrases/speak.ts';
import { deviceJobShelf } from '../store/deviceJobShelf.ts';
import { sayFirst } from './first/sayFirst.ts';
import { screenLanguage } from './frame/screenLanguage.ts';

/**
 * Opens the program in the language of its reader: texts are made as the rest of it is loaded. The yard is
 * drawn before what one draws with is fetched.
 */
const open = async (): Promise<void> => {
  const shelf = deviceJobShelf();
  // the device opens its shelf while script is fetched; what fails is told when it is read
  shelf.heads().catch(() => undefined);
  // a catalogue that cannot be had leaves English
  await speak(screenLanguage()).catch(() => undefined);
  document.documentElement.lang = language();
  const { openFirst } = await import('./first/openFirst.ts');
  const opened = await openFirst(shelf);
  const { show } = await import('./show.tsx');
  await show(opened);
};

/** A part of the program is not to be had, as on a first visit that the connection leaves in the middle. */
const sayStuck = (error: unknown): void => {
  sayFirst({
    line: phrase`The program could not be loaded whole; nothing that is kept on this device is touched.`,
    key: { label: phrase`Try again`, onPress: () => window.location.reload() },
  });
  console.error(error);
};

// not awaited here: the rest of the program has parts of this one, which is done when its last line is
void open().catch(sayStuck);
