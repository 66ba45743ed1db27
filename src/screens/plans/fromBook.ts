import type { Hardware } from '../../site/hardware.ts';

/**
 * A part of the book as a site takes it over: measured on a part in the shop is not measured on the
 * one for this site.
 */
export const fromBook = (part: Hardware): Hardware =>
  part.from === 'measured' ? { ...part, from: 'book' } : part;
