import { inches, type Inches } from '../units/inches.ts';
import type { Source } from './source.ts';

/** A panel is cut no narrower than this where the one beside it can give: inches. */
export const leastPanel: { readonly length: Inches; readonly source: Source } = {
  length: inches(12),
  source: { text: 'ours, no published source', status: 'practice' },
};
