import { phrase } from '../../phrases/phrase.ts';
import type { Feature } from '../../site/feature.ts';

type Of = Extract<Feature, { kind: 'height zone' }>['of'];

/** What sheets call ground with a height limit. */
export const heightZoneWords: Readonly<Record<Of, string>> = {
  'sight triangle': phrase`sight triangle`,
  'front yard': phrase`front yard`,
};
