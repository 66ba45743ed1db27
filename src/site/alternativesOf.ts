import type { Alternative } from './alternative.ts';
import type { AlternativeId } from './ids.ts';
import { inOrder } from './pathOrder.ts';
import type { Site } from './site.ts';

/** The alternatives of a site in their order, each with its id; none where there are none. */
export const alternativesOf = ({
  alternatives,
}: Pick<Site, 'alternatives'>): (Alternative & { readonly id: AlternativeId })[] =>
  inOrder<AlternativeId, Alternative>(alternatives);
