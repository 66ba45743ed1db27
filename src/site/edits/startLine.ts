import { entry } from '../entry.ts';
import type { SpecId } from '../ids.ts';
import { markAt } from '../markAt.ts';
import type { Place } from '../markAt.ts';
import { nextId } from '../nextId.ts';
import { orderBetween } from '../pathOrder.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';

/**
 * Starts an open fence line of one spec, under `nextId(site, 'line')`, at a mark or at a point
 * that becomes one. RangeError for an unknown spec or mark.
 */
export const startLine = (site: Site, spec: SpecId, place: Place): Site => {
  entry(site, 'specs', spec);
  const start = markAt(site, place);
  return withEntry(start.site, 'lines', nextId(site, 'line'), {
    label: '',
    spec,
    closed: false,
    hook: 'start',
    path: { [nextId(site, 'vertex')]: { mark: start.mark, order: orderBetween(null, null) } },
    stepped: {},
    curved: {},
    walls: {},
    follows: null,
    guards: null,
  });
};
