import type { Hardware } from '../../site/hardware.ts';
import type { HardwareId } from '../../site/ids.ts';
import type { Parts } from '../../site/parts.ts';
import type { Site } from '../../site/site.ts';
import type { PartPlan } from '../../store/plans.ts';
import { fromBook } from './fromBook.ts';

const listed = (parts: Parts): PartPlan[] =>
  (Object.entries(parts) as [HardwareId, Hardware][]).map(([id, hardware]) => ({ id, hardware }));

/** What a site carries of these kinds, then what the hardware book has beside it. */
export const offeredParts = (
  site: Pick<Site, 'hardware'>,
  book: Parts,
  kinds: readonly Hardware['kind'][],
): PartPlan[] => {
  const others = listed(book)
    .filter(({ id }) => !Object.hasOwn(site.hardware, id))
    .map(({ id, hardware }) => ({ id, hardware: fromBook(hardware) }));
  return [...listed(site.hardware), ...others].filter(({ hardware }) =>
    kinds.includes(hardware.kind),
  );
};
