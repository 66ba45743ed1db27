import type { Parts } from '../../site/parts.ts';
import type { PartPlan } from '../../store/plans.ts';
import type { AssumedHardware } from '../../trade/hardware.ts';
import { assumedPart } from './assumedPart.ts';
import { fromBook } from './fromBook.ts';

/** A generic part with the figures that the book has under its id; assumed where it has none. */
export const bookPart = (generic: AssumedHardware, book: Parts): PartPlan => {
  const assumed = assumedPart(generic);
  const own = Object.hasOwn(book, assumed.id) ? book[assumed.id] : undefined;
  return own?.kind === generic.kind ? { id: assumed.id, hardware: fromBook(own) } : assumed;
};
