import type { Tour, TourStep } from '../../../store/tour.ts';
import type { TourNow } from './tourNow.ts';

type Done = (now: TourNow, tour: Tour) => boolean;

const dones: Readonly<Record<TourStep, Done>> = {
  fence: ({ tool, drawing }) => tool === 'fence' || drawing,
  start: ({ drawing }) => drawing,
  length: ({ seen }, { since }) => seen.taped > since.taped,
  finish: ({ drawing }) => !drawing,
  gate: ({ seen }, { since }) => seen.gates > since.gates,
  opening: (_, { looks }) => looks.includes('opening'),
  // a yard without a flag has none to look at
  flag: ({ flags }, { looks }) => flags === 0 || looks.includes('flag'),
  tape: ({ seen }, { since }) => seen.hooks !== since.hooks,
  sheet: (_, { looks }) => looks.includes('sheet'),
};

/** Whether what a step asks for was done since it began. */
export const stepDone = (step: TourStep, now: TourNow, tour: Tour): boolean =>
  dones[step](now, tour);
