import type { GateLayout, Layout } from '../../engine/layout.ts';
import type { Site } from '../../site/site.ts';

/** What a gate is called on sheets and lists. */
export const gateTitle = (gate: GateLayout, site: Site): string =>
  site.gates[gate.id]?.label.trim() || 'Gate';

/** Single or double swing, by its leaves. */
export const gateKind = ({ leaves }: GateLayout): string =>
  leaves.length === 1 ? 'single swing' : 'double swing';

/** The tags of a gate's posts from the start of its leg, or that it is not placed. */
export const gatePosts = ({ posts }: GateLayout, layout: Layout): string => {
  if (posts === null) return 'not placed';
  return [posts.start, posts.end].map((id) => layout.posts[id]?.tag ?? '?').join('–');
};
