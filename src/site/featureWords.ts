import type { Feature } from './feature.ts';
import { phrase } from '../phrases/phrase.ts';

/** What a thing on the ground is, in a word. */
export const featureWords: Readonly<Record<Feature['kind'], string>> = {
  building: phrase`building`,
  paving: phrase`paving`,
  pool: phrase`pool`,
  'keep-out': phrase`keep-out`,
  boundary: phrase`boundary`,
  'height zone': phrase`height zone`,
  utility: phrase`utility`,
  tree: phrase`tree`,
  note: phrase`note`,
};
