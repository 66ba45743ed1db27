import type { Comparison } from '../../engine/compare/comparison.ts';
import { comparedName } from './comparedName.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Of each yard side by side what has no price, by its code; no text for one that is priced whole. */
export const unpricedTexts = ({ columns }: Comparison): string[] =>
  columns.flatMap((one) => {
    const unpriced = one.priced?.unpriced ?? [];
    if (unpriced.length === 0) return [];
    const codes = unpriced.join(', ');
    return [
      phrase`${comparedName(one)}: no price for ${codes}: nothing of these is in its amounts`,
    ];
  });
