import { boundsOf } from '../../geometry/bounds.ts';
import { boxShapes, shapeSize, type BoxShapes } from '../../geometry/boxShapes.ts';
import type { OrientedBox } from '../../geometry/orientedBox.ts';
import { shapesOverlap } from '../../geometry/shapesOverlap.ts';
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
import { chainAtoms, chainLines } from './chainLines.ts';
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
import { lineStrips } from './lineStrips.ts';
import { textBox } from './textBox.ts';

/** A shorter chain is written as its total, paper inches. */
const leastWhole = 0.8;

/** Where others are in the way all tiers step out, so often, or go to the other side of the fence. */
const stands = [
  ...[0, 1, 2, 3].map((step) => ({ side: 1, step })),
  ...[0, 1].map((step) => ({ side: -1, step })),
] as const;

/**
 * The other side is where names stand: a chain goes there where its own has no room for all tiers, before it
 * is cut to its total; else hardly.
 */
const costOfOtherSide = { 'no room': 7, room: 30 } as const;

/** The dimension line of a chain where its tiers stand. */
const lineAt = (line: ChainLine, { side, step }: (typeof stands)[number]): ChainLine => ({
  ...line,
  out: { x: side * line.out.x, y: side * line.out.y },
  off: line.off + step * toNextTier,
});

/** How many ways to write a chain it had better try than lie on something, or run through a text. */
const textOn: CoverCost = { thin: 0, chain: 8, solid: 8, heavy: 8, leader: 20 };
const costOfCrossing = 20;
/** The same for a line of it through the leader of another. */
const costOfLeader = 4;

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
  /** What is wrong with it besides what it lies on. */
  readonly wrong: number;
}

/** On the pad, where a person can come closer and every drag letters anew, fewer of these are tried. */
const standsOnPad = 2;

type Stand = (typeof stands)[number];

/** How many tiers may lie one beyond another: the bays, the stretches, the total. */
const mostTiers = 3;

/** True where none of so many tiers, the innermost on a line, comes into the window. */
const tiersLieOff = ({ points, off, out }: ChainLine, count: number, room: Lettering): boolean => {
  const bounds = boundsOf(points);
  if (bounds === null) return false;
  const { minX, minY, maxX, maxY } = bounds;
  for (let n = 0; n < count; n += 1) {
    const far = off + n * toNextTier;
    const [x, y] = [far * out.x, far * out.y];
    if (room.reaches({ minX: minX + x, minY: minY + y, maxX: maxX + x, maxY: maxY + y }))
      return false;
  }
  return true;
};

const attempt = (
  tiersIn: (tried: Trial) => readonly ChainTier[],
  wrong: number,
  room: Lettering,
): Attempt | 'no room' | 'too short' => {
  const tried = trial(room);
  const tiers: LetteredTier[] = [];
  for (const tier of tiersIn(tried)) {
    const lettered = letterTier(tier, tried);
    if (typeof lettered === 'string') return lettered;
    tiers.push(lettered);
  }
  // nothing to read: the chain lies outside the window
  if (tiers.every(({ texts }) => texts.length === 0)) return 'no room';
  return { tiers, tried, wrong };
};

type PaperBox = OrientedBox<'paper'>;

/** A line so wide at each side, paper inches. */
const thin = ({ centre, halfWidth, angle }: PaperBox, halfHeight: number): PaperBox => {
  return { centre, halfWidth, halfHeight, angle };
};

/** How many of some shapes, from the `first` on, a box lies on; it stops at the `most`. */
const among = (
  shapes: BoxShapes,
  box: PaperBox,
  { first = 0, most }: { readonly first?: number; readonly most: number },
): number => {
  const own = boxShapes([box]);
  const count = shapes.length / shapeSize;
  let sum = 0;
  for (let n = first; n < count && sum < most; n++) if (shapesOverlap(shapes, n, own)) sum += 1;
  return sum;
};

/** What is wrong with a chain by itself: leaders through its texts and one another, texts on its lines. */
const costOfItself = (
  boxes: readonly PaperBox[],
  leaders: readonly PaperBox[],
  strips: readonly PaperBox[],
): number => {
  const [shapes, leading] = [boxShapes(boxes), boxShapes(leaders)];
  const crossed = leaders.filter(
    (leader, n) =>
      among(shapes, thin(leader, 0.001), { most: 2 }) > 1 ||
      among(leading, leader, { first: n + 1, most: 1 }) > 0,
  ).length;
  const lines = boxShapes(strips.map((strip) => thin(strip, 0.004)));
  const on = boxes.filter((box) => among(lines, box, { most: 1 }) > 0).length;
  return crossed * costOfCrossing + on * textOn.solid;
};

const stripsOf = ({ line, within }: LetteredTier): PaperBox[] =>
  lineStrips(chainLines(line, within));

/** What is wrong with a way to write a chain: texts on lines, lines through texts; no more than told beyond the limit. */
const costOf = ({ tiers, wrong }: Attempt, room: Lettering, limit: number): number => {
  let sum = wrong;
  const boxes = tiers.flatMap(({ texts }) => texts.map(textBox));
  for (const box of boxes) {
    if (sum > limit) return sum;
    sum += weigh(room.covers(box, { cost: textOn, limit: limit - sum }), textOn);
  }
  const leaders = tiers.flatMap((tier) => tier.leaders);
  for (const leader of leaders) {
    if (sum > limit) return sum;
    sum += costOfCrossing * (room.crosses(leader) + room.leaders(leader));
  }
  if (sum > limit) return sum;
  const strips = tiers.flatMap(stripsOf);
  sum += costOfItself(boxes, leaders, strips);
  for (const strip of strips) {
    if (sum > limit) return sum;
    sum += costOfCrossing * room.crosses(strip) + costOfLeader * room.leaders(strip);
  }
  return sum;
};

/** Ways to write a chain, the most wished for first: in full, without its stretches, as its total. */
function* waysToWrite(chain: ChainPrimitive, line: ChainLine, room: Lettering) {
  const total = chain.total ?? chain.texts[0] ?? '';
  const inFull = lengthOnPaper(line) < leastWhole ? [] : [chain];
  const bare = chain.stretches === undefined ? [] : [{ ...chain, stretches: [] }];
  const forms = inFull.length === 0 ? [] : [...inFull, ...bare];
  const tries = room.thin === 'broken' ? stands : stands.slice(0, standsOnPad);
  let own: keyof typeof costOfOtherSide = 'room';
  const wrongAt = ({ side }: Stand): number => (side < 0 ? costOfOtherSide[own] : 0);
  for (const form of forms) {
    for (const stand of tries) {
      const at = lineAt(line, stand);
      const tiers = (tried: Trial) => allTiers(form, at, tried);
      const isOff = tiersLieOff(at, mostTiers, room);
      const way = isOff ? 'no room' : attempt(tiers, wrongAt(stand), room);
      if (stand === stands[0]) own = way === 'no room' ? way : 'room';
      yield way;
      if (way === 'too short') break;
    }
  }
  const hints = chain.texts.length > 1 && chain.elsewhere ? [`${total}, ${chain.elsewhere}`] : [];
  for (const text of [...hints, total]) {
    let way: ReturnType<typeof attempt> = 'no room';
    for (const stand of tries) {
      // one piece that is too short for its text is so wherever it stands
      if (way !== 'too short') {
        const at = lineAt(line, stand);
        const tier = { line: { ...at, points: chainEnds(at) }, pieces: wholePiece(at, text) };
        way = tiersLieOff(at, 1, room) ? 'no room' : attempt(() => [tier], wrongAt(stand), room);
      }
      yield way;
    }
  }
}

/** True where no tier of a chain comes into the window, wherever it stands. */
const liesOff = (line: ChainLine, room: Lettering): boolean =>
  stands.every((stand) => tiersLieOff(lineAt(line, stand), mostTiers, room));

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
  const called = [chain.name ?? '', total.replaceAll('\n', ', ')];
  const left = unlettered(called.filter((text) => text !== '').join(' '));
  const line = chainLineOf(chain, projection);
  if (line === null) return left;
  if (liesOff(line, room)) return left;
  const best = cheapest(waysToWrite(chain, line, room), (way, limit) =>
    typeof way === 'string' ? null : costOf(way, room, limit),
  );
  if (best === null || typeof best === 'string') return left;
  const { tiers, tried } = best;
  tried.keep();
  for (const strip of tiers.flatMap(stripsOf)) room.avoid(strip, 'chain');
  return {
    lines: tiers.flatMap(({ line: own, within, lines }) => [...chainAtoms(own, within), ...lines]),
    texts: tiers.flatMap(({ texts }) => texts),
    left: tiers.some(({ seen }) => seen === 'a part') ? left.left : [],
  };
};
