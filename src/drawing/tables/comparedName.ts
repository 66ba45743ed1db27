import type { Candidate } from '../../engine/compare/candidate.ts';
import { phrase } from '../../phrases/phrase.ts';

/** What a compared yard is called at the head of its column. */
export const comparedName = ({ label }: Pick<Candidate, 'label'>): string =>
  label === '' ? phrase`As drawn` : label;
