import type { Feature } from './feature.ts';
import { phrase } from '../phrases/phrase.ts';

const names: Readonly<Record<Exclude<Feature['kind'], 'height zone'>, string>> = {
  building: phrase`Building`,
  paving: phrase`Paving`,
  pool: phrase`Pool`,
  'keep-out': phrase`Keep-out`,
  boundary: phrase`Boundary`,
  utility: phrase`Utility`,
  tree: phrase`Tree`,
  note: phrase`Note`,
};

const zones = { 'sight triangle': phrase`Sight triangle`, 'front yard': phrase`Front yard` };

/** What a feature is called on its card, by its kind; ground with a height limit by what it is. */
export const featureName = (feature: Feature): string =>
  feature.kind === 'height zone' ? zones[feature.of] : names[feature.kind];
