import { entry } from '../entry.ts';
import type { FenceLine } from '../fenceLine.ts';
import type { LineId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';

/** Says what a fence line is a barrier round; null for nothing. RangeError for an unknown line. */
export const setGuards = (site: Site, id: LineId, guards: FenceLine['guards']): Site =>
  withEntry(site, 'lines', id, { ...entry(site, 'lines', id), guards });
