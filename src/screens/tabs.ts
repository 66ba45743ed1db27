/** The four screens by the words on their tabs and in the address. */
export const tabs = [
  { id: 'yard', label: 'Yard' },
  { id: 'openings', label: 'Openings' },
  { id: 'load-list', label: 'Load list' },
  { id: 'crew-sheet', label: 'Crew sheet' },
] as const;

export type TabId = (typeof tabs)[number]['id'];

/** The tab that an address fragment such as `#load-list` names; the yard for any other. */
export const tabOf = (fragment: string): TabId =>
  tabs.find(({ id }) => `#${id}` === fragment)?.id ?? 'yard';
