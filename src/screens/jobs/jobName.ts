import { phrase } from '../../phrases/phrase.ts';
import type { JobHead } from '../../store/jobShelf.ts';

/** What a job is called in the list. */
export const jobName = ({ name }: Pick<JobHead, 'name'>): string =>
  name === '' ? phrase`Unnamed job` : name;

const letters = (text: string): string =>
  text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();

/** Whether every word that is looked for is in what the title block says of a job. */
export const isFound = ({ name, customer, place }: JobHead, looked: string): boolean => {
  const said = letters([name, customer, place].join(' '));
  return letters(looked)
    .split(/\s+/)
    .every((word) => said.includes(word));
};
