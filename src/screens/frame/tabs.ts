import type { Session } from '../../store/session.ts';

/** The four screens, by the words on their tabs, in the order of the work. */
export const tabs: readonly { readonly screen: Session['screen']; readonly label: string }[] = [
  { screen: 'yard', label: 'Yard' },
  { screen: 'openings', label: 'Openings' },
  { screen: 'load', label: 'Load list' },
  { screen: 'sheet', label: 'Crew sheet' },
];

/** The screen that an address fragment such as `#load` names; null for any other. */
export const screenOf = (fragment: string): Session['screen'] | null =>
  tabs.find(({ screen }) => `#${screen}` === fragment)?.screen ?? null;
