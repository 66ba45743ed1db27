import type { Layout, Leg } from '../engine/layout.ts';
import { distance } from '../geometry/distance.ts';
import type { SitePoint } from '../geometry/point.ts';
import { spot } from '../geometry/tolerance.ts';
import { nearestOnTrack, trackAt } from '../geometry/track.ts';
import type { Selection } from '../store/selection.ts';
import type { Touch } from './hit.ts';

/** What a hand takes to bow a leg: where it is on it. */
export interface BowKnob {
  readonly leg: Leg;
  readonly at: SitePoint;
}

/** The middle of a bay, inches along a leg, and whether a gate stands next to it. */
interface BayMiddle {
  readonly along: number;
  readonly byGate: boolean;
}

const bayMiddles = (leg: Leg, { lines, posts }: Layout): BayMiddle[] =>
  Object.values(lines)
    .flatMap(({ runs }) => runs)
    .filter(({ legs }) => legs.includes(leg.id))
    .flatMap((run) =>
      run.spaces.flatMap(({ kind }, n) => {
        const ends = [run.posts[n], run.posts[n + 1]].map((stop) =>
          posts.get(stop?.post ?? 'post:'),
        );
        const [a, b] = ends.map((post) =>
          post === undefined ? null : nearestOnTrack(post.at, leg),
        );
        if (kind !== 'bay' || !a || !b || a.off > spot || b.off > spot) return [];
        const byGate = [n - 1, n + 1].some((next) => run.spaces[next]?.kind === 'gate');
        return [{ along: (a.along + b.along) / 2, byGate }];
      }),
    );

/**
 * The knob of the leg that is selected: in the bay nearest to its middle, where no post is taken for it,
 * and not next to a gate if there are others; in its middle where it has no bays. Null while something else is selected.
 */
export const bowKnob = (layout: Layout, selection: Selection): BowKnob | null => {
  if (selection?.kind !== 'leg') return null;
  const leg = layout.lines[selection.line]?.legs.find(({ id }) => id === selection.id);
  if (leg === undefined) return null;
  const middle = leg.length / 2;
  const [bay] = bayMiddles(leg, layout).toSorted(
    (a, b) =>
      Number(a.byGate) - Number(b.byGate) ||
      Math.abs(a.along - middle) - Math.abs(b.along - middle),
  );
  return { leg, at: trackAt(leg, bay?.along ?? middle) };
};

/** A knob leaves the rest of its leg to be taken as such. */
const shareOfLeg = 1 / 6;

/** The knob of the selected leg if a hand touches it; null else. */
export const touchedKnob = (
  layout: Layout,
  selection: Selection,
  { at, reach }: Touch,
): BowKnob | null => {
  const knob = bowKnob(layout, selection);
  if (knob === null) return null;
  return distance(at, knob.at) <= Math.min(reach, knob.leg.length * shareOfLeg) ? knob : null;
};
