import { inches, type Inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** A panel is cut no narrower than this where the one beside it can give: inches. */
export const leastPanel: { readonly length: Inches; readonly source: Source } = {
  length: inches(12),
  source: { text: phrase`ours, no published source`, status: 'practice' },
};
