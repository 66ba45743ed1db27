import type { Site } from '../../site/site.ts';

const maps = [
  ['features', 'feature', 'features'],
  ['lines', 'fence line', 'fence lines'],
  ['marks', 'mark', 'marks'],
  ['shots', 'grade shot', 'grade shots'],
] as const;

/** What a site has more than before, such as `2 features, 9 marks`. */
export const broughtText = (before: Site, after: Site): string =>
  maps
    .flatMap(([name, one, many]) => {
      const count = Object.keys(after[name]).length - Object.keys(before[name]).length;
      return count > 0 ? [`${count.toLocaleString('en-US')} ${count === 1 ? one : many}`] : [];
    })
    .join(', ') || 'nothing new';
