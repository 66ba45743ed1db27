import type { GateLayout, Layout } from '../../engine/layout.ts';
import type { Site } from '../../site/site.ts';

/** What a gate is called on sheets and lists. */
export const gateTitle = (gate: GateLayout, site: Site): string =>
  site.gates[gate.id]?.label.trim() || 'Gate';

/** How a gate closes its opening and with how many leaves, by what stands in it. */
export const gateKind = ({ opening: { terms } }: Pick<GateLayout, 'opening'>): string => {
  const has = (wanted: string): boolean => terms.some(({ role }) => role === wanted);
  const single = terms.filter(({ role }) => role === 'leaf').length === 1;
  if (has('gap')) return 'gap without a gate';
  if (has('overlap')) return single ? 'single cantilever' : 'double cantilever';
  if (has('stop')) return 'double swing on a centre stop';
  return single ? 'single swing' : 'double swing';
};

/** The tags of a gate's posts from the start of its leg, or that it is not placed. */
export const gatePosts = ({ posts }: GateLayout, layout: Layout): string => {
  if (posts === null) return 'not placed';
  return [posts.start, posts.end].map((id) => layout.posts[id]?.tag ?? '?').join('–');
};
