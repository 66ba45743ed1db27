import type { Infill } from './infill.ts';

/** What is between the posts of a fence, in one word of the trade. */
export const infillWord = ({ kind }: Pick<Infill, 'kind'>): string =>
  ({ 'chain link': 'fabric', boards: 'boards', panels: 'panels' })[kind];
