import type { Feature } from '../../../site/feature.ts';

/** What each kind of feature is called on its card. */
export const featureNames: Readonly<Record<Feature['kind'], string>> = {
  building: 'Building',
  paving: 'Paving',
  pool: 'Pool',
  'keep-out': 'Keep-out',
  'height zone': 'Ground with a height limit',
  boundary: 'Boundary',
  utility: 'Utility',
  tree: 'Tree',
  note: 'Note',
};
