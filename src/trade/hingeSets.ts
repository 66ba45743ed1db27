import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/**
 * A hinge set is what sits at one hinge point of a leaf. Two carry it, one near the top and one near
 * the bottom; they take up the same width one over the other, so that it counts once in an opening.
 */
export const hingeSets = {
  perLeaf: 2,
  source: {
    text: phrase`two hinge sets a leaf: common practice, no published source`,
    status: 'practice',
  },
} as const satisfies { readonly perLeaf: number; readonly source: Source };
