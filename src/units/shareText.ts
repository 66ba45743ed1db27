import { phrase } from '../phrases/phrase.ts';

const most = 1000;

/** A share of what something may bear in whole percent, rounded up, 1 as `100 %`; over ten times as `more than 1000 %`. */
export const shareText = (share: number): string => {
  const percent = Math.max(1, Math.ceil(100 * share - 1e-9));
  return percent > most ? phrase`more than ${most} %` : `${percent} %`;
};
