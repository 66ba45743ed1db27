import type { GateLayout, LeafLayout, Layout } from '../../engine/layout.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Where a gate hangs and to which side it opens, as a crew reads it. */
export interface SwingTexts {
  /** The tag of the post with the hinges, for a double gate of both. */
  readonly hingedAt: string;
  readonly opens: string;
}

/** True for a leaf that hangs on the gate post nearer to the start of the leg. */
const hangsAtStart = ({ closed }: LeafLayout, { bearing }: GateLayout): boolean =>
  Math.cos(closed - bearing) > 0;

/**
 * The posts that carry the hinges, and the side to which the leaves open for one who stands at the
 * first of them and looks at the other gate post. Null for a gate that is not placed.
 */
export const swingTexts = (
  gate: GateLayout,
  { posts }: Pick<Layout, 'posts'>,
): SwingTexts | null => {
  const [leaf] = gate.leaves;
  if (gate.posts === null || leaf === undefined) return null;
  const [start, end] = [gate.posts.start, gate.posts.end].map((id) => posts.get(id)?.tag ?? '?');
  const [own, other] = hangsAtStart(leaf, gate) ? [start, end] : [end, start];
  const [near, far] = [`${own}`, `${other}`];
  return {
    hingedAt: gate.leaves.length === 1 ? near : phrase`${near} and ${far}`,
    opens:
      leaf.turns > 0
        ? phrase`to the left, looking from ${near} to ${far}`
        : phrase`to the right, looking from ${near} to ${far}`,
  };
};
