import type { TourStep } from '../../../store/tour.ts';
import type { TourNow } from './tourNow.ts';

/** Places of the screen that the tour can point at, by their `data-point`. */
export const tourPoints = [
  'yard',
  'crew sheet',
  'tool fence',
  'tool gate',
  'tool select',
  'pad',
  'length',
  'finish',
  'pull up',
  'why opening',
  'flag',
  'hook',
  'pdf',
] as const;

export type TourPoint = (typeof tourPoints)[number];

type Points = (now: TourNow) => readonly TourPoint[];

const points: Readonly<Record<TourStep, Points>> = {
  fence: () => ['tool fence'],
  start: ({ tool }) => [tool === 'fence' ? 'pad' : 'tool fence'],
  length: ({ drawing, tool }) => {
    if (drawing) return ['length'];
    return [tool === 'fence' ? 'pad' : 'tool fence'];
  },
  finish: () => ['finish'],
  gate: ({ tool }) => [tool === 'gate' ? 'pad' : 'tool gate'],
  opening: ({ selection, tool }) => {
    if (selection?.kind === 'gate') return ['why opening', 'pull up'];
    return [tool === 'select' ? 'pad' : 'tool select'];
  },
  flag: () => ['flag', 'pull up'],
  tape: () => ['hook'],
  sheet: ({ screen }) => [screen === 'sheet' ? 'pdf' : 'crew sheet'],
};

/**
 * Where the key for a step is, the first of these that is to be seen: a step of the yard that is taken
 * on another screen points back there.
 */
export const pointsAt = (step: TourStep, now: TourNow): readonly TourPoint[] => {
  const elsewhere = step === 'opening' ? ['yard', 'openings'] : ['yard'];
  if (step !== 'sheet' && !elsewhere.includes(now.screen)) return ['yard'];
  // on its own screen every opening has its reason beside it
  if (step === 'opening' && now.screen === 'openings') return ['why opening'];
  return points[step](now);
};
