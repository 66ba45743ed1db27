import type { Acceptance } from '../acceptance.ts';
import type { AcceptanceId } from '../ids.ts';
import { nextId } from '../nextId.ts';
import type { Site } from '../site.ts';
import { withEntry, withoutEntries } from '../withEntries.ts';

/** Earlier acceptances of the same rule at the same place. */
const sameIn = ({ acceptances }: Site, { rule, on }: Acceptance): AcceptanceId[] =>
  (Object.entries(acceptances) as [AcceptanceId, Acceptance][])
    .filter(([, one]) => one.rule === rule && one.on === on)
    .map(([id]) => id);

/**
 * Accepts a flag with a reason and initials, in place of an earlier acceptance of the same rule at the same
 * place. RangeError without a reason or initials.
 */
export const acceptFlag = (site: Site, acceptance: Acceptance): Site => {
  const accepted = withEntry(site, 'acceptances', nextId(site, 'acceptance'), acceptance);
  return withoutEntries(accepted, 'acceptances', sameIn(site, acceptance));
};
