import { leafThickness } from '../../engine/gate/leafThickness.ts';
import { leavesOf } from '../../engine/gate/termsOf.ts';
import type { GateLayout, Layout } from '../../engine/layout.ts';
import type { Hardware } from '../../site/hardware.ts';
import type { LeafId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import { slack } from '../../geometry/tolerance.ts';
import type { Inches } from '../../units/inches.ts';

/** Outside diameters that a part of a gate has to fit, in inches; those that nobody said are left out. */
export interface Mounts {
  readonly posts: readonly Inches[];
  readonly frames: readonly Inches[];
}

type End = 'start' | 'end';

const postAt = (gate: GateLayout, end: End, { posts }: Layout): Inches[] => {
  const id = gate.posts?.[end];
  const post = id === undefined ? undefined : posts[id];
  return post === undefined ? [] : [post.od];
};

/**
 * What the hinges of a leaf, or the latch of its gate, are fixed to: the posts as they are laid out
 * and the frames where their pipe was said. A latch between two leaves has no post.
 */
export const mountsOf = (
  site: Site,
  layout: Layout,
  gate: GateLayout,
  on: LeafId | 'latch',
): Mounts => {
  const drawn = site.gates[gate.id];
  if (drawn === undefined) return { posts: [], frames: [] };
  const leaves = leavesOf(drawn);
  const said = leaves.filter(({ id, frame }) => frame !== null && (on === 'latch' || on === id));
  const frames = said.map(leafThickness);
  const at = leaves.findIndex(({ id }) => id === on);
  const single: End = drawn.hingedAt;
  if (on === 'latch') {
    if (leaves.length !== 1 || drawn.way.kind !== 'swing') return { posts: [], frames };
    return { posts: postAt(gate, single === 'start' ? 'end' : 'start', layout), frames };
  }
  const end: End = leaves.length === 1 ? single : at === 0 ? 'start' : 'end';
  return { posts: postAt(gate, end, layout), frames };
};

/**
 * One line where a part is made for other posts or frames than it would be fixed to, else null.
 * What nobody has said of the part is no misfit. Lengths are written by `write`.
 */
export const misfit = (
  { label, fits }: Hardware,
  { posts, frames }: Mounts,
  write: (length: Inches) => string,
): string | null => {
  const rows = [
    ['posts', fits.post, posts],
    ['frames', fits.frame, frames],
  ] as const;
  for (const [what, range, ods] of rows) {
    const other = ods.find(
      (od) => range !== null && (od < range.low - slack || od > range.high + slack),
    );
    if (range === null || other === undefined) continue;
    const { low, high } = range;
    const sizes = low === high ? write(low) : `${write(low)} to ${write(high)}`;
    return `${label} fits ${what} of ${sizes} OD: expected ${write(other)} as here`;
  }
  return null;
};
