import '@fontsource/barlow/latin-400.css';
import '@fontsource/barlow/latin-500.css';
import '@fontsource/barlow/latin-600.css';
import '@fontsource/barlow/latin-700.css';
import './theme.css';
import './frame/frame.css';
import './fields/fields.css';
import './page.css';
import { language, speak } from '../phrases/speak.ts';
import { screenLanguage } from './frame/screenLanguage.ts';

/** Opens the program in the language of its reader: texts are made as the rest of it is loaded. */
const open = async (): Promise<void> => {
  // a catalogue that cannot be had leaves English
  await speak(screenLanguage()).catch(() => undefined);
  document.documentElement.lang = language();
  const { show } = await import('./show.tsx');
  await show();
};

// not awaited here: the rest of the program has parts of this one, which is done when its last line is
void open();
