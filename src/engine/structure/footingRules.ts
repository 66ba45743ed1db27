import { phrase } from '../../phrases/phrase.ts';

/** What each rule that a footing goes by is called. */
export const footingRules = {
  hole: phrase`hole`,
  'gate post': phrase`gate post`,
  frost: phrase`frost`,
  pole: phrase`pole`,
  'pole held at the ground': phrase`pole held at the ground`,
  'core in rock': phrase`core in rock`,
} as const;

/** A rule that a footing goes by. */
export type FootingRule = keyof typeof footingRules;
