import type { Opening } from '../opening.ts';
import { openingOf } from './openingOf.ts';

/**
 * The two openings of a pair of leaves that latch to a stop between them, the one nearer to the
 * start of the leg first: each from the inside face of its post to the face of the stop, with a
 * target and ranges of its own, in inches. Null for an opening without a stop.
 */
export const halvesOf = ({ terms }: Pick<Opening, 'terms'>): readonly [Opening, Opening] | null => {
  const stop = terms.findIndex(({ role }) => role === 'stop');
  return stop < 0 ? null : [openingOf(terms.slice(0, stop)), openingOf(terms.slice(stop + 1))];
};
