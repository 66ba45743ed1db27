import type { Layout } from '../engine/layout.ts';
import { legsOf } from '../site/legsOf.ts';
import type { Site } from '../site/site.ts';
import { pinOf } from './pinOf.ts';
import type { Selection } from './selection.ts';

/**
 * Whether what is selected is there in a site laid out with these posts; nothing selected always
 * is, and a post that is held is as long as its pin.
 */
export const stands = (
  site: Site,
  selection: Selection,
  posts: Layout['posts'] = new Map(),
): boolean => {
  if (selection === null) return true;
  const { kind, id } = selection;
  if (kind === 'line') return id in site.lines;
  if (kind === 'gate') return id in site.gates;
  if (kind === 'feature') return id in site.features;
  if (kind === 'mark') return id in site.marks;
  if (kind === 'pin') return id in site.pins;
  if (kind === 'shot') return id in site.shots;
  if (kind === 'tape') return id in site.observations;
  if (kind === 'underlay') return id in site.underlays;
  if (kind === 'post') {
    const pin = pinOf(id);
    return pin === null ? posts.has(id) : pin in site.pins;
  }
  const line = site.lines[selection.line];
  return line !== undefined && legsOf(line).some((leg) => leg.id === id);
};
