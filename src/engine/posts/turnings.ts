import { principalAngle } from '../../geometry/principalAngle.ts';
import { trackBearing } from '../../geometry/track.ts';
import { turn } from '../../geometry/turn.ts';
import type { LineId, MarkId } from '../../site/ids.ts';
import type { Leg } from '../layout.ts';
import { isLoop, type Chain } from './chain.ts';

/** What stands at a stop of a chain for its direction alone; nothing where the fence goes straight on. */
export type Turning = 'end' | 'junction' | 'corner' | 'bend' | 'straight';

/**
 * A turn smaller than this, in radians, is straight on: it moves a mark by 1/8 in over 100 ft,
 * which is what a tape can tell (common practice, no published source).
 */
export const straightTurn = 1e-4;

/** By which lines and how many legs each mark is used. */
export type MarkUses = ReadonlyMap<MarkId, { readonly lines: ReadonlySet<LineId>; legs: number }>;

/** Counts, for every mark, the fence lines that pass it and the legs that meet at it. */
export const usesOfMarks = (chains: readonly Chain[]): MarkUses => {
  const uses = new Map<MarkId, { lines: Set<LineId>; legs: number }>();
  for (const chain of chains) {
    chain.stops.forEach(({ mark }, n) => {
      const use = uses.get(mark) ?? { lines: new Set(), legs: 0 };
      const atEnd = !isLoop(chain) && (n === 0 || n === chain.stops.length - 1);
      use.lines.add(chain.id);
      use.legs += atEnd ? 1 : 2;
      uses.set(mark, use);
    });
  }
  return uses;
};

/** The legs that meet at a stop that a chain passes. */
const legsAt = ({ legs }: Chain, n: number, loop: boolean): readonly Leg[] => {
  const [before, after] = [legs[n - 1] ?? (loop ? legs.at(-1) : undefined), legs[n]];
  return before === undefined || after === undefined ? [] : [before, after];
};

/** By how much a chain turns from one leg to the next, either way: on curves from tangent to tangent. */
const turnBetween = ([before, after]: readonly Leg[]): number => {
  if (before === undefined || after === undefined) return 0;
  if (before.bow === 0 && after.bow === 0) {
    return Math.abs(turn(before.start, before.end, after.end));
  }
  const [coming, going] = [trackBearing(before, before.length), trackBearing(after, 0)];
  return Math.abs(principalAngle(going - coming));
};

/** Whether a curved leg, or one that stands on a wall, begins or ends: it is a run of its own. */
const isOwnRun =
  ({ line }: Chain) =>
  ({ id, bow }: Leg): boolean =>
    bow !== 0 || line.walls[id] !== undefined;

/**
 * For every stop of a chain, what its direction asks for: `junction` where fence lines meet or a
 * line meets itself, `corner` for a turn over the corner angle (radians), `bend` for less, and where
 * a curved leg or one on a wall begins or ends.
 */
export const turningsOf = (chain: Chain, cornerAngle: number, uses: MarkUses): Turning[] => {
  const { stops } = chain;
  const loop = isLoop(chain);
  return stops.map((stop, n) => {
    const use = uses.get(stop.mark);
    if (use !== undefined && (use.lines.size > 1 || use.legs > 2)) return 'junction';
    const before = stops[n - 1] ?? (loop ? stops.at(-1) : undefined);
    const after = stops[n + 1] ?? (loop ? stops[0] : undefined);
    if (before === undefined || after === undefined) return 'end';
    const meeting = legsAt(chain, n, loop);
    const size = turnBetween(meeting);
    if (size <= straightTurn) return meeting.some(isOwnRun(chain)) ? 'bend' : 'straight';
    // a turn drawn at just the corner angle stays a bend however it is rounded
    return size > cornerAngle + straightTurn ? 'corner' : 'bend';
  });
};
