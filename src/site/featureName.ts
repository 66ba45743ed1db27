import type { Feature } from './feature.ts';

const names: Readonly<Record<Exclude<Feature['kind'], 'height zone'>, string>> = {
  building: 'Building',
  paving: 'Paving',
  pool: 'Pool',
  'keep-out': 'Keep-out',
  boundary: 'Boundary',
  utility: 'Utility',
  tree: 'Tree',
  note: 'Note',
};

const zones = { 'sight triangle': 'Sight triangle', 'front yard': 'Front yard' } as const;

/** What a feature is called on its card, by its kind; ground with a height limit by what it is. */
export const featureName = (feature: Feature): string =>
  feature.kind === 'height zone' ? zones[feature.of] : names[feature.kind];
