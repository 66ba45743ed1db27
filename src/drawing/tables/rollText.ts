import type { GateLayout, Layout, SlideLayout } from '../../engine/layout.ts';
import { bearing } from '../../geometry/bearing.ts';
import { subtract } from '../../geometry/subtract.ts';
import { phrase } from '../../phrases/phrase.ts';
import { sideWords } from './sideWords.ts';

/** True for a leaf that rolls in past the gate post nearer to the end of the leg. */
const rollsToEnd = ({ stored }: SlideLayout, gate: GateLayout): boolean =>
  Math.cos(bearing(stored.end, stored.start) - gate.bearing) > 0;

/**
 * Past which post the leaves of a gate roll aside, and on which side of the fence they run for one
 * who stands at that post and looks at the other. Null for a gate that does not roll or is not placed.
 */
export const rollText = (gate: GateLayout, { posts }: Pick<Layout, 'posts'>): string | null => {
  const [slide] = gate.slides;
  if (gate.posts === null || slide === undefined) return null;
  const [start, end] = [gate.posts.start, gate.posts.end].map((id) => posts.get(id)?.tag ?? '?');
  const toEnd = rollsToEnd(slide, gate);
  const [own, other] = toEnd ? [end, start] : [start, end];
  const { x, y } = subtract(slide.stored.end, gate.middle);
  const leftOfLeg = Math.cos(gate.bearing) * y - Math.sin(gate.bearing) * x > 0;
  const side = leftOfLeg === toEnd ? sideWords.right : sideWords.left;
  const [near, far] = [`${own}`, `${other}`];
  return gate.slides.length > 1
    ? phrase`rolls apart past ${`${start}`} and ${`${end}`}, on the ${side}, looking from ${near} to ${far}`
    : phrase`rolls past ${near}, on the ${side}, looking from ${near} to ${far}`;
};
