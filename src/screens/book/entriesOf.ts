import type { Hardware } from '../../site/hardware.ts';
import type { HardwareId } from '../../site/ids.ts';
import type { Parts } from '../../site/parts.ts';
import type { PartPlan } from '../../store/plans.ts';

/**
 * The parts of a book by name, of which every word that is searched for stands in the name, the
 * remark or the line that is written of them.
 */
export const entriesOf = (
  book: Parts,
  search: string,
  lineOf: (part: Hardware) => string,
): PartPlan[] => {
  const words = search.toLowerCase().split(/\s+/);
  return (Object.entries(book) as [HardwareId, Hardware][])
    .filter(([, part]) => {
      const text = `${part.label} ${part.remark} ${lineOf(part)}`.toLowerCase();
      return words.every((word) => text.includes(word));
    })
    .toSorted(([a, one], [b, other]) => one.label.localeCompare(other.label) || (a < b ? -1 : 1))
    .map(([id, hardware]) => ({ id, hardware }));
};
