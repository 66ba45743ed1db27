import { phrase } from '../../phrases/phrase.ts';
import type { Becomes } from '../../site/becomes.ts';
import type { FoundShape } from '../../site/found.ts';
import type { GroupSummary } from './foundSummary.ts';

const written = (count: number): string => count.toLocaleString('en-US');

const words: Readonly<Record<FoundShape, (count: number) => string>> = {
  areas: (n) => (n === 1 ? phrase`1 closed line` : phrase`${written(n)} closed lines`),
  holes: (n) =>
    n === 1 ? phrase`1 hole in closed lines` : phrase`${written(n)} holes in closed lines`,
  lines: (n) => (n === 1 ? phrase`1 line` : phrase`${written(n)} lines`),
  points: (n) => (n === 1 ? phrase`1 point` : phrase`${written(n)} points`),
  heights: (n) => (n === 1 ? phrase`1 height` : phrase`${written(n)} heights`),
  texts: (n) => (n === 1 ? phrase`1 text` : phrase`${written(n)} texts`),
};

/** What things of a group can become, as they are named on the screen. */
export const becomesWords: Readonly<Record<Becomes, string>> = {
  'leave out': phrase`Leave out`,
  boundary: phrase`Boundary`,
  building: phrase`Building`,
  paving: phrase`Paving`,
  pool: phrase`Pool`,
  'keep-out': phrase`Keep-out`,
  'sight triangle': phrase`Sight triangle`,
  'front yard': phrase`Front yard`,
  'fence line': phrase`Fence line`,
  'utility, electric': phrase`Electric line`,
  'utility, gas': phrase`Gas line`,
  'utility, communication': phrase`Communication line`,
  'utility, water': phrase`Water line`,
  'utility, reclaimed': phrase`Reclaimed water line`,
  'utility, sewer': phrase`Sewer line`,
  mark: phrase`Mark`,
  note: phrase`Note`,
  'grade shot': phrase`Grade shot`,
};

/** Such as `1,204 lines`. */
export const countText = ({ shape, count }: GroupSummary): string => words[shape](count);
