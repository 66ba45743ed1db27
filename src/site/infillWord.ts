import type { Infill } from './infill.ts';
import { phrase } from '../phrases/phrase.ts';

/** What is between the posts of a fence, in one word of the trade. */
export const infillWord = ({ kind }: Pick<Infill, 'kind'>): string =>
  ({ 'chain link': phrase`fabric`, boards: phrase`boards`, panels: phrase`panels` })[kind];

/** The same, where a sentence speaks of the one that is there. */
export const theInfill = ({ kind }: Pick<Infill, 'kind'>): string =>
  ({ 'chain link': phrase`the fabric`, boards: phrase`the boards`, panels: phrase`the panels` })[
    kind
  ];
