import type { Site } from '../../site/site.ts';

const parts = ['marks', 'lines', 'gates', 'features', 'shots', 'underlays'] as const;

/** Whether nothing is drawn yet: no mark, no thing on the ground, no shot and no picture under them. */
export const isBare = (site: Site): boolean =>
  parts.every((part) => Object.keys(site[part]).length === 0);
