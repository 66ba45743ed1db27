import { phrase } from '../../phrases/phrase.ts';
import type { Feature } from '../../site/feature.ts';

type Service = Extract<Feature, { kind: 'utility' }>['service'];

/** What sheets call a utility by what it carries. */
export const serviceWords: Readonly<Record<Service, string>> = {
  electric: phrase`electric`,
  gas: phrase`gas`,
  communication: phrase`communication`,
  water: phrase`water`,
  reclaimed: phrase`reclaimed`,
  sewer: phrase`sewer`,
};
