import { distance } from '../../geometry/distance.ts';
import { spot } from '../../geometry/tolerance.ts';
import type { MarkId } from '../../site/ids.ts';
import { marksObserved } from '../../site/marksObserved.ts';
import { freedomsOf } from './freedoms.ts';
import { boardOf, hair, moveOf, type Base, type Motion } from './motion.ts';
import type { Network } from './networks.ts';
import type { Places } from './rows.ts';
import type { Strength } from './strength.ts';

/** A network without its fixes, with what its observations leave free. */
export interface Part {
  readonly network: Network;
  readonly places: Places;
  readonly strength: Strength;
  readonly motions: readonly Motion[];
}

/** Marks that what was observed holds to each other. */
export interface Body {
  readonly marks: ReadonlySet<MarkId>;
  /** Whether they are held to fixed marks as well, so that not even all together can move. */
  readonly fast: boolean;
}

/** A body with what others are looked at from. */
export interface Board extends Body {
  /** Two of its marks that all others are looked at from; null where they are fast, or one alone. */
  readonly base: Base | null;
}

/** What a network leaves free where its marks are, by how strong it is there; of fixes, which hold nothing, it has none. */
export const partOf = (network: Network, strength: Strength): Part => ({
  network,
  places: network.spots,
  strength,
  motions: freedomsOf(strength),
});

/** All marks that go along with two as if on one board with them, in every motion; null where these do not. */
const boardWith = ({ motions, places }: Part, base: Base): ReadonlySet<MarkId> | null => {
  const [a, b] = base.map((id) => places.get(id) ?? { x: 0, y: 0 });
  const long = a === undefined || b === undefined ? 0 : distance(a, b);
  if (a === undefined || long < spot) return null;
  let along = [...places];
  for (const motion of motions) {
    const board = boardOf(motion, base, places);
    if (board === null) return null;
    along = along.filter(([id, at]) => {
      const [move, with_] = [moveOf(motion, id), board(at)];
      // a short base tells the turn less well
      const most = hair * (1 + distance(a, at) / long);
      return Math.hypot(move.x - with_.x, move.y - with_.y) <= most;
    });
  }
  return new Set(along.map(([id]) => id));
};

function* pairsIn({ network: { sightings } }: Part): Generator<Base> {
  for (const { seen } of sightings) {
    const marks = Object.values(marksObserved(seen));
    for (const [n, a] of marks.entries()) for (const b of marks.slice(n + 1)) yield [a, b];
  }
}

/** The bodies of a part, in the order in which its observations name them. */
const bodiesIn = (part: Part): Board[] => {
  const bodies: Board[] = [];
  for (const base of pairsIn(part)) {
    if (bodies.some(({ marks }) => marks.has(base[0]) && marks.has(base[1]))) continue;
    const marks = boardWith(part, base);
    if (marks !== null) bodies.push({ marks, fast: false, base });
    if (marks?.size === part.places.size) break;
  }
  return bodies;
};

/** The marks that no motion moves. */
const stillIn = ({ places, motions }: Part): MarkId[] =>
  [...places.keys()].filter((id) => motions.every((motion) => !motion.has(id)));

const largest = (bodies: readonly Board[]): Board | null =>
  bodies.reduce<Board | null>(
    (most, body) => (most === null || body.marks.size > most.marks.size ? body : most),
    null,
  );

/**
 * The body that all else is held to or loose from: of the marks that can move to each other in no way,
 * to the first order, the most. Where two or more are fast, by fixed marks and what holds to them, it
 * is these; where just one is, the most that hold to it. Null where nothing holds.
 */
export const bodyOf = (parts: readonly Part[], fixed: readonly MarkId[]): Board | null => {
  const still = new Set([...fixed, ...parts.flatMap(stillIn)]);
  if (still.size > 1) return { marks: still, fast: true, base: null };
  const bodies = parts.flatMap(bodiesIn);
  const [only] = still;
  if (only === undefined) return largest(bodies);
  const alone: Board = { marks: still, fast: false, base: null };
  return largest([alone, ...bodies.filter(({ marks }) => marks.has(only))]);
};
