import { dot } from '../../geometry/dot.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { unitVector } from '../../geometry/unitVector.ts';
import type { MarkId } from '../../site/ids.ts';
import type { Candidate } from './candidate.ts';
import type { Held } from './held.ts';
import { hair, movesBeside } from './motion.ts';
import type { Places } from './rows.ts';

/** What each freedom does to something, by the number of the freedom; nothing for those left out. */
type Effect = ReadonlyMap<number, number>;
type Moves = ReadonlyMap<number, SitePoint>;

const sizeOf = (effect: Effect): number => Math.hypot(...effect.values());

/** Two effects are of one freedom where they go together in everything. */
const together = (a: Effect, b: Effect): boolean => {
  let sum = 0;
  for (const [freedom, value] of a) sum += value * (b.get(freedom) ?? 0);
  return Math.abs(sum) >= (1 - hair) * sizeOf(a) * sizeOf(b);
};

/** Which freedoms an effect is of, so that only those alike need be compared. */
const kindOf = (effect: Effect): string => [...effect.keys()].toSorted((a, b) => a - b).join(' ');

const effectOf = (moves: Moves, way: SitePoint): Map<number, number> => {
  const entries = [...moves].map(([freedom, move]) => [freedom, dot(move, way)] as const);
  return new Map(entries.filter(([, value]) => Math.abs(value) > hair));
};

const still: Moves = new Map();

/** How every loose mark moves beside the body in each freedom: those of its part, else two of its own. */
const movesIn = ({ parts, body, loose }: Held): ReadonlyMap<MarkId, Moves> => {
  const all = new Map<MarkId, Moves>();
  let first = 0;
  for (const { motions, places } of parts) {
    const known = body?.base ?? null;
    const base = known !== null && places.has(known[0]) ? known : null;
    for (const id of places.keys()) {
      if (body?.marks.has(id) === true) continue;
      const moves = movesBeside(motions, id, base, places).map(
        (move, n) => [first + n, move] as const,
      );
      all.set(id, new Map(moves.filter(([, { x, y }]) => Math.abs(x) + Math.abs(y) > hair)));
    }
    first += motions.length;
  }
  for (const { mark } of loose) {
    if (all.has(mark) || body?.marks.has(mark) === true) continue;
    all.set(
      mark,
      new Map([
        [first, { x: 1, y: 0 }],
        [first + 1, { x: 0, y: 1 }],
      ]),
    );
    first += 2;
  }
  return all;
};

/** Marks that would be held by whatever takes one freedom, and how far they move in it. */
interface Group {
  readonly effect: Effect;
  readonly marks: MarkId[];
  most: number;
}

/** The marks that are loose one way only, by the freedom that they are loose in. */
const groupsIn = ({ loose }: Held, moves: ReadonlyMap<MarkId, Moves>) => {
  const groups = new Map<string, Group[]>();
  for (const { mark, ways } of loose) {
    const [way, other] = ways;
    const own = moves.get(mark);
    if (way === undefined || other !== undefined || own === undefined) continue;
    const effect = effectOf(own, way);
    const kind = kindOf(effect);
    const alike = groups.get(kind) ?? [];
    groups.set(kind, alike);
    const group = alike.find((one) => together(one.effect, effect));
    if (group === undefined) alike.push({ effect, marks: [mark], most: sizeOf(effect) });
    else {
      group.marks.push(mark);
      group.most = Math.max(group.most, sizeOf(effect));
    }
  }
  return groups;
};

/** What a tape would do. */
interface Tried {
  readonly one: Candidate;
  /** How many marks it would hold at once. */
  readonly holds: number;
  /** Whether it is pulled from the body, and how many loose marks hang together at its other end. */
  readonly joins: boolean;
  readonly hang: number;
  /** How far off the marks would be in the freedom that it takes, one standard deviation, inches. */
  readonly error: number;
}

const better = (a: Tried, b: Tried): number =>
  b.holds - a.holds ||
  Number(b.joins) - Number(a.joins) ||
  b.hang - a.hang ||
  a.error - b.error ||
  a.one.length - b.one.length;

/** What a tape does to each freedom: how its far end moves along it, less how its near end does. */
const stretchOf = (
  { from, to }: Candidate,
  moves: ReadonlyMap<MarkId, Moves>,
  places: Places,
): Effect => {
  const [a, b] = [moves.get(from) ?? still, moves.get(to) ?? still];
  const [start, end] = [places.get(from), places.get(to)];
  if ((a === still && b === still) || start === undefined || end === undefined) return new Map();
  const way = unitVector(start, end);
  if (way === null) return new Map();
  const effect = new Map<number, number>();
  for (const [freedom, move] of b) effect.set(freedom, dot(move, way));
  for (const [freedom, move] of a) effect.set(freedom, (effect.get(freedom) ?? 0) - dot(move, way));
  for (const [freedom, value] of effect) if (Math.abs(value) <= hair) effect.delete(freedom);
  return effect;
};

/**
 * The tape that holds the most marks at once, where one can; else one from the body to where the most
 * loose marks hang together, as the first of two or three. Of tapes that do as much, the one that
 * leaves the marks least off in the freedom that it takes. Null where no tape takes any.
 */
export const holdingTape = (
  held: Held,
  places: Places,
  candidates: readonly Candidate[],
): Candidate | null => {
  const moves = movesIn(held);
  const groups = groupsIn(held, moves);
  const inBody = (id: MarkId): boolean => held.body?.marks.has(id) === true;
  const sizes = new Map(
    held.parts.flatMap(({ strength, places: own }) =>
      [...strength.frame.columns.keys()].map((id) => [id, own.size] as const),
    ),
  );
  const hanging = (id: MarkId): number => (inBody(id) ? 1 : (sizes.get(id) ?? 1));
  const tryOut = (one: Candidate): Tried | null => {
    const effect = stretchOf(one, moves, places);
    const size = sizeOf(effect);
    if (size <= hair) return null;
    const alike = groups.size === 0 ? undefined : groups.get(kindOf(effect));
    const group = alike?.find((other) => together(other.effect, effect));
    return {
      one,
      holds: group?.marks.length ?? 0,
      joins: inBody(one.from) !== inBody(one.to),
      hang: Math.max(hanging(one.from), hanging(one.to)),
      error: (one.sigma * (group?.most ?? 1)) / size,
    };
  };
  let best: Tried | null = null;
  for (const one of candidates) {
    const tried = tryOut(one);
    if (tried !== null && (best === null || better(best, tried) > 0)) best = tried;
  }
  return best?.one ?? null;
};
