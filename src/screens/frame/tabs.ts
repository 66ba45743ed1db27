import { phrase } from '../../phrases/phrase.ts';
import type { Session } from '../../store/session.ts';

/** The four screens, by the words on their tabs, in the order of the work. */
export const tabs: readonly { readonly screen: Session['screen']; readonly label: string }[] = [
  { screen: 'yard', label: phrase`Yard` },
  { screen: 'openings', label: phrase`Openings` },
  { screen: 'load', label: phrase`Load list` },
  { screen: 'sheet', label: phrase`Crew sheet` },
];

/** The screen that an address fragment such as `#load` names; null for any other. */
export const screenOf = (fragment: string): Session['screen'] | null =>
  tabs.find(({ screen }) => `#${screen}` === fragment)?.screen ?? null;
