import { later } from './later.tsx';

/** The screens that the first one can do without. */
export const laterScreens = {
  openings: later(async () => (await import('./openings/Openings.tsx')).Openings),
  load: later(async () => (await import('./load/LoadList.tsx')).LoadList),
  sheet: later(async () => (await import('./sheet/CrewSheet.tsx')).CrewSheet),
} as const;
