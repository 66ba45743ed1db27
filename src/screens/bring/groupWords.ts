import type { Becomes } from '../../site/becomes.ts';
import type { FoundShape } from '../../site/found.ts';
import type { GroupSummary } from './foundSummary.ts';

const words: Readonly<Record<FoundShape, readonly [one: string, many: string]>> = {
  areas: ['closed line', 'closed lines'],
  holes: ['hole in closed lines', 'holes in closed lines'],
  lines: ['line', 'lines'],
  points: ['point', 'points'],
  heights: ['height', 'heights'],
  texts: ['text', 'texts'],
};

/** What things of a group can become, as they are named on the screen. */
export const becomesWords: Readonly<Record<Becomes, string>> = {
  'leave out': 'Leave out',
  boundary: 'Boundary',
  building: 'Building',
  paving: 'Paving',
  pool: 'Pool',
  'keep-out': 'Keep-out',
  'sight triangle': 'Sight triangle',
  'front yard': 'Front yard',
  'fence line': 'Fence line',
  'utility, electric': 'Electric line',
  'utility, gas': 'Gas line',
  'utility, communication': 'Communication line',
  'utility, water': 'Water line',
  'utility, reclaimed': 'Reclaimed water line',
  'utility, sewer': 'Sewer line',
  mark: 'Mark',
  note: 'Note',
  'grade shot': 'Grade shot',
};

/** Such as `1,204 lines`. */
export const countText = ({ shape, count }: GroupSummary): string => {
  const [one, many] = words[shape];
  return `${count.toLocaleString('en-US')} ${count === 1 ? one : many}`;
};
