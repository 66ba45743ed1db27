import type { SitePoint } from '../../geometry/point.ts';
import { nextId } from '../nextId.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';

/** Adds a mark at a point, under `nextId(site, 'mark')`. RangeError beyond ten miles. */
export const addMark = (site: Site, at: SitePoint, label = ''): Site =>
  withEntry(site, 'marks', nextId(site, 'mark'), { x: at.x, y: at.y, label, fixed: false });
