import { alternativesOf } from '../alternativesOf.ts';
import type { AlternativeId } from '../ids.ts';
import { nextId } from '../nextId.ts';
import { orderBetween } from '../pathOrder.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';
import { namedAlternative } from '../namedAlternative.ts';

/**
 * Adds an alternative after the others, built as the plan until it is told otherwise; a site that has one
 * under the id keeps its own. RangeError without a name, and where the orders of a file leave no room.
 */
export const addAlternative = (
  site: Site,
  label: string,
  id: AlternativeId = nextId(site, 'alternative'),
): Site => {
  if (Object.hasOwn(site.alternatives, id)) return site;
  const order = orderBetween(alternativesOf(site).at(-1)?.order ?? null, null);
  return withEntry(site, 'alternatives', id, {
    label: namedAlternative(label),
    order,
    instead: {},
  });
};
