import { legsOf } from '../site/legsOf.ts';
import type { Site } from '../site/site.ts';
import type { Selection } from './selection.ts';

/** Whether what is selected is there in a site; nothing selected always is. */
export const stands = (site: Site, selection: Selection): boolean => {
  if (selection === null) return true;
  const { kind, id } = selection;
  if (kind === 'line') return id in site.lines;
  if (kind === 'gate') return id in site.gates;
  if (kind === 'feature') return id in site.features;
  if (kind === 'mark') return id in site.marks;
  const line = site.lines[selection.line];
  return line !== undefined && legsOf(line).some((leg) => leg.id === id);
};
