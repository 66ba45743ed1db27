import type { Found, FoundGroup, FoundRefusal } from '../../site/found.ts';

/** What is shown of a group before it is brought in; the things themselves stay with what read them. */
export interface GroupSummary extends Pick<FoundGroup, 'key' | 'layer' | 'shape' | 'hidden'> {
  readonly count: number;
  /** Some of its lines have arcs. */
  readonly bent: boolean;
}

/** What is shown of a file. */
export interface FoundSummary extends Pick<Found, 'told'> {
  readonly groups: readonly GroupSummary[];
  /** The first of those that cannot be brought in, and how many there are. */
  readonly refused: readonly FoundRefusal[];
  readonly refusals: number;
}

/** Refused things that are told one by one; of more the count is enough. */
const mostTold = 20;

const summaryOf = (group: FoundGroup): GroupSummary => {
  const { key, layer, shape, hidden = false } = group;
  const named = { key, layer, shape, hidden };
  if (!('paths' in group)) return { ...named, count: group.points.length, bent: false };
  const bent = group.paths.some(({ bows }) => bows.some((bow) => bow !== 0));
  return { ...named, count: group.paths.length, bent };
};

/** The summary of what a file has: little to hand over, however much that is. */
export const foundSummary = ({ groups, told, refused }: Found): FoundSummary => ({
  groups: groups.map(summaryOf),
  told,
  refused: refused.slice(0, mostTold),
  refusals: refused.length,
});
