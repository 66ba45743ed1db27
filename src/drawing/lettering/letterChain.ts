import { boxesOverlap } from '../../geometry/boxesOverlap.ts';
import type { Projection } from '../projection.ts';
import { cheapest } from './cheapest.ts';
import {
  chainEnds,
  chainLineOf,
  toNextTier,
  type ChainLine,
  type ChainPrimitive,
} from './chainLine.ts';
import type { ChainPiece } from './chainPiece.ts';
import { outerTiers, singlePieces, wholePiece, type ChainTier } from './chainTiers.ts';
import { weigh, type CoverCost } from './coverCost.ts';
import { unlettered, type Lettered } from './lettered.ts';
import { trial, type Lettering } from './lettering.ts';
import {
  inLine,
  isSeen,
  lengthOnPaper,
  letterTier,
  type LetteredTier,
  type Trial,
} from './letterTier.ts';

/** A shorter chain is written as its total, paper inches. */
const leastWhole = 0.8;

/** Where others are in the way all tiers step out, so often. */
const steps = [0, 1, 2, 3] as const;

/** How many ways to write a chain it had better try than lie on something, or run through a text. */
const textOn: CoverCost = { thin: 0, solid: 8, heavy: 8, leader: 20 };
const costOfCrossing = 20;

const isCovered = (n: number, groups: readonly { from: number; to: number }[]): boolean =>
  groups.some(({ from, to }) => n >= from && n < to);

/** The chain's pieces; where those of a group do not all fit singly, the group as one piece. */
const groupedPieces = (chain: ChainPrimitive, line: ChainLine, room: Trial): ChainPiece[] => {
  const single = singlePieces(chain, line);
  const isTight = (piece: ChainPiece): boolean =>
    isSeen(line, piece, room) && inLine(line, piece, room) === null;
  const crowded = (chain.groups ?? []).filter(({ from, to }) =>
    single.slice(from, to).some(isTight),
  );
  // what the next tier measures too is written there
  const above = chain.stretches ?? [];
  const isAbove = (piece: ChainPiece, n: number): boolean =>
    above.some(({ from, to }) => from === n && to === n + 1) && isTight(piece);
  const grouped = crowded.flatMap(({ from, to, text, shorter }): ChainPiece[] => {
    const [first, last] = [single[from], single[to - 1]];
    if (first === undefined || last === undefined) return [];
    const within = line.points.slice(from + 1, to);
    return [
      {
        from: first.from,
        to: last.to,
        text,
        within,
        ...(shorter === undefined ? {} : { shorter }),
      },
    ];
  });
  return [...single.filter((piece, n) => !isCovered(n, crowded) && !isAbove(piece, n)), ...grouped];
};

/** All tiers of a chain: the bays, what lies beyond them, the total. */
const allTiers = (chain: ChainPrimitive, line: ChainLine, room: Trial): ChainTier[] => {
  const outer = outerTiers(chain, line);
  const beyond = (outer.at(-1)?.line.off ?? line.off) - line.off;
  const inner = { ...line, beyond };
  return [{ line: inner, pieces: groupedPieces(chain, inner, room) }, ...outer];
};

/** One way to write a chain, with the room that it takes. */
interface Attempt {
  readonly tiers: readonly LetteredTier[];
  readonly tried: Trial;
}

const attempt = (
  tiersIn: (tried: Trial) => readonly ChainTier[],
  room: Lettering,
): Attempt | null => {
  const tried = trial(room);
  const tiers: LetteredTier[] = [];
  for (const tier of tiersIn(tried)) {
    const lettered = letterTier(tier, tried);
    if (lettered === null) return null;
    tiers.push(lettered);
  }
  // nothing to read: the chain lies outside the window
  return tiers.every(({ texts }) => texts.length === 0) ? null : { tiers, tried };
};

/** What is wrong with a way to write a chain: texts on lines, lines through texts. */
const costOf = (tiers: readonly LetteredTier[], room: Lettering): number => {
  const boxes = tiers.flatMap((tier) => tier.boxes);
  const leaders = tiers.flatMap((tier) => tier.leaders);
  const strips = tiers.flatMap((tier) => tier.strips);
  const ownCrossed = leaders.filter(
    (leader, n) =>
      boxes.filter((box) => boxesOverlap({ ...leader, halfHeight: 0.001 }, box)).length > 1 ||
      leaders.slice(n + 1).some((other) => boxesOverlap(leader, other)),
  ).length;
  const ownOn = boxes.filter((box) =>
    strips.some((strip) => boxesOverlap({ ...strip, halfHeight: 0.004 }, box)),
  ).length;
  return (
    boxes.reduce((sum, box) => sum + weigh(room.covers(box), textOn), 0) +
    strips.reduce((sum, strip) => {
      const under = room.covers(strip);
      return sum + costOfCrossing * room.crosses(strip) + 4 * under.leader;
    }, 0) +
    ownCrossed * costOfCrossing +
    ownOn * textOn.solid
  );
};

/** Ways to write a chain, the most wished for first: in full, without its stretches, as its total. */
function* waysToWrite(chain: ChainPrimitive, line: ChainLine, room: Lettering) {
  const total = chain.total ?? chain.texts[0] ?? '';
  const stepped = (step: number): ChainLine => ({ ...line, off: line.off + step * toNextTier });
  const inFull = lengthOnPaper(line) < leastWhole ? [] : [chain];
  const bare = chain.stretches === undefined ? [] : [{ ...chain, stretches: [] }];
  const forms = inFull.length === 0 ? [] : [...inFull, ...bare];
  for (const form of forms)
    for (const step of steps) yield attempt((tried) => allTiers(form, stepped(step), tried), room);
  const hints = chain.texts.length > 1 && chain.elsewhere ? [`${total}, ${chain.elsewhere}`] : [];
  for (const text of [...hints, total])
    for (const step of steps) {
      const own = stepped(step);
      const tier = { line: { ...own, points: chainEnds(own) }, pieces: wholePiece(own, text) };
      yield attempt(() => [tier], room);
    }
}

/**
 * Finds places for all texts of a chain and takes the room: every piece, its stretches and the total; else
 * equal bays in groups; else the total with a hint where to find its pieces; else the total alone. Its
 * tiers step out where others are in the way. What finds none, or lies outside the window, is left by
 * the chain's name.
 */
export const letterChain = (
  chain: ChainPrimitive,
  projection: Projection,
  room: Lettering,
): Lettered => {
  const total = chain.total ?? chain.texts[0] ?? '';
  const left = unlettered([chain.name ?? '', total].filter((text) => text !== '').join(' '));
  const line = chainLineOf(chain, projection);
  if (line === null) return left;
  const best = cheapest(waysToWrite(chain, line, room), (way) =>
    way === null ? null : costOf(way.tiers, room),
  );
  if (best === null) return left;
  const { tiers, tried } = best;
  tried.keep();
  for (const strip of tiers.flatMap(({ strips }) => strips)) room.avoid(strip, 'solid');
  return {
    lines: tiers.flatMap(({ lines }) => lines),
    texts: tiers.flatMap(({ texts }) => texts),
    left: tiers.some(({ seen }) => seen === 'a part') ? left.left : [],
  };
};
