import type { GateLayout, Layout } from '../../engine/layout.ts';
import type { Site } from '../../site/site.ts';
import { phrase } from '../../phrases/phrase.ts';

/** What a gate is called on sheets and lists. */
export const gateTitle = (gate: GateLayout, site: Site): string =>
  site.gates[gate.id]?.label.trim() || phrase`Gate`;

const kindWords = {
  gap: phrase`gap without a gate`,
  'single cantilever': phrase`single cantilever`,
  'double cantilever': phrase`double cantilever`,
  'centre stop': phrase`double swing on a centre stop`,
  'single swing': phrase`single swing`,
  'double swing': phrase`double swing`,
} as const;

/** How a gate closes its opening and with how many leaves. */
export type GateKind = keyof typeof kindWords;

/** How a gate closes its opening and with how many leaves, by what stands in it. */
export const gateKindOf = ({ opening: { terms } }: Pick<GateLayout, 'opening'>): GateKind => {
  const has = (wanted: string): boolean => terms.some(({ role }) => role === wanted);
  const single = terms.filter(({ role }) => role === 'leaf').length === 1;
  if (has('gap')) return 'gap';
  if (has('overlap')) return single ? 'single cantilever' : 'double cantilever';
  if (has('stop')) return 'centre stop';
  return single ? 'single swing' : 'double swing';
};

/** How a gate closes its opening and with how many leaves, in words. */
export const gateKind = (gate: Pick<GateLayout, 'opening'>): string => kindWords[gateKindOf(gate)];

/** The tags of a gate's posts from the start of its leg, or that it is not placed. */
export const gatePosts = ({ posts }: GateLayout, layout: Layout): string => {
  if (posts === null) return phrase`not placed`;
  return [posts.start, posts.end].map((id) => layout.posts.get(id)?.tag ?? '?').join('–');
};
