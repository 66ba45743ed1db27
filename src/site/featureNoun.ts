import type { Feature } from './feature.ts';
import { featureWords } from './featureWords.ts';
import { phrase } from '../phrases/phrase.ts';

const zones = { 'sight triangle': phrase`sight triangle`, 'front yard': phrase`front yard` };

/** What a feature is called within a sentence, by its kind; ground with a height limit by what it is. */
export const featureNoun = (feature: Feature): string =>
  feature.kind === 'height zone' ? zones[feature.of] : featureWords[feature.kind];
