import { joined, phrase } from '../../phrases/phrase.ts';
import type { Site } from '../../site/site.ts';

const count = (many: number): string => many.toLocaleString('en-US');

const maps = [
  ['features', (n: number) => (n === 1 ? phrase`1 feature` : phrase`${count(n)} features`)],
  ['lines', (n: number) => (n === 1 ? phrase`1 fence line` : phrase`${count(n)} fence lines`)],
  ['marks', (n: number) => (n === 1 ? phrase`1 mark` : phrase`${count(n)} marks`)],
  ['shots', (n: number) => (n === 1 ? phrase`1 grade shot` : phrase`${count(n)} grade shots`)],
] as const;

/** What a site has more than before, such as `2 features, 9 marks`. */
export const broughtText = (before: Site, after: Site): string => {
  const texts = maps.flatMap(([name, said]) => {
    const more = Object.keys(after[name]).length - Object.keys(before[name]).length;
    return more > 0 ? [said(more)] : [];
  });
  return texts.length === 0 ? phrase`nothing new` : joined(texts, ', ');
};
