import { useSyncExternalStore } from 'react';
import { tabOf, type TabId } from './tabs.ts';

const listen = (heard: () => void) => {
  window.addEventListener('hashchange', heard);
  return () => window.removeEventListener('hashchange', heard);
};

/** The screen that the address names; the browser's back button leads to the one before. */
export const useTab = (): TabId => useSyncExternalStore(listen, () => tabOf(window.location.hash));
