import type { ChainPiece } from './chainPiece.ts';
import { nextFrom } from './chainLines.ts';
import { chainEnds, toNextTier, type ChainLine, type ChainPrimitive } from './chainLine.ts';

/** A tier of a chain: its dimension line and what is measured on it. */
export interface ChainTier {
  readonly line: ChainLine;
  readonly pieces: readonly ChainPiece[];
}

/** The first line of a text: what is clear of an opening is said on the tier of stretches, where there is one. */
const firstLine = (text: string): string => text.split('\n')[0] ?? '';

/** The pieces between neighbouring points. */
export const singlePieces = (
  { texts, stretches = [] }: ChainPrimitive,
  { points }: ChainLine,
): ChainPiece[] =>
  texts.flatMap((text, n): ChainPiece[] => {
    const [from, to] = [points[n], points[n + 1]];
    if (from === undefined || to === undefined) return [];
    return [{ from, to, text: stretches.length > 0 ? firstLine(text) : text }];
  });

/** The next tier out: from some of the points of a chain to others. */
const outer = (inner: ChainLine, pieces: readonly ChainPiece[], off: number): ChainTier => {
  const points = [...pieces.slice(0, 1).map(({ from }) => from), ...pieces.map(({ to }) => to)];
  return { line: { ...inner, points, off, from: nextFrom(inner), beyond: 0 }, pieces };
};

/** From end to end of a chain as one piece. */
export const wholePiece = (line: ChainLine, text: string): ChainPiece[] => {
  const [from, to] = chainEnds(line);
  return from === undefined || to === undefined ? [] : [{ from, to, text }];
};

/** The tier of the stretches between terminal posts, and of the openings; none unless the chain has it. */
const stretchTier = (chain: ChainPrimitive, inner: ChainLine): ChainTier[] => {
  const pieces = (chain.stretches ?? []).flatMap(({ from, to, text }): ChainPiece[] => {
    const [first, last] = [inner.points[from], inner.points[to]];
    return first === undefined || last === undefined ? [] : [{ from: first, to: last, text }];
  });
  return pieces.length === 0 ? [] : [outer(inner, pieces, inner.off + toNextTier)];
};

/** The tiers of a chain beyond that of its bays: its stretches where it has some, its total. */
export const outerTiers = (chain: ChainPrimitive, inner: ChainLine): ChainTier[] => {
  const stretches = stretchTier(chain, inner);
  const before = stretches[0]?.line ?? inner;
  const total =
    chain.total === null
      ? []
      : [outer(before, wholePiece(inner, chain.total), before.off + toNextTier)];
  const tiers = [...stretches, ...total];
  const last = tiers.at(-1)?.line.off ?? inner.off;
  return tiers.map(({ line, pieces }) => ({
    line: { ...line, beyond: last - line.off },
    pieces,
  }));
};
