import { turn } from '../../geometry/turn.ts';
import type { LineId, MarkId } from '../../site/ids.ts';
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

/** Whether a leg that stands on a wall begins or ends at a stop: it is a run of its own. */
const atWall = ({ legs, line }: Chain, n: number, loop: boolean): boolean => {
  const before = legs[n - 1] ?? (loop ? legs.at(-1) : undefined);
  return [before, legs[n]].some((leg) => leg !== undefined && line.walls[leg.id] !== undefined);
};

/**
 * For every stop of a chain, what its direction asks for: `junction` where fence lines meet or a
 * line meets itself, `corner` for a turn over the corner angle (radians), `bend` for less, and where
 * a leg on a wall begins or ends.
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
    const size = Math.abs(turn(before.at, stop.at, after.at));
    if (size <= straightTurn) return atWall(chain, n, loop) ? 'bend' : 'straight';
    // a turn drawn at just the corner angle stays a bend however it is rounded
    return size > cornerAngle + straightTurn ? 'corner' : 'bend';
  });
};
