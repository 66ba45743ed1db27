import type { Space } from '../../engine/layout.ts';
import type { Inches } from '../../units/inches.ts';

/** One piece of a chain: how long it reads, and what lies there; null for a mark beside an end post. */
export interface ChainPart {
  readonly length: Inches;
  readonly of: Space | null;
}

/** Pieces of a chain in a row: `from` up to, not including, `to`. */
export interface ChainSpan {
  readonly from: number;
  readonly to: number;
}

const stretchOf = (part: ChainPart | undefined): number | null =>
  part?.of?.kind === 'bay' ? part.of.stretch : null;

/** Where the bays of one stretch that begin at a piece end; the next piece where it is no bay. */
const endOfSpan = (parts: readonly ChainPart[], from: number): number => {
  const stretch = stretchOf(parts[from]);
  if (stretch === null) return from + 1;
  const other = parts.findIndex((part, n) => n > from && stretchOf(part) !== stretch);
  return other < 0 ? parts.length : other;
};

/** A chain from terminal post to terminal post: each stretch with all its bays, each opening, each end. */
export const spansOf = (parts: readonly ChainPart[]): ChainSpan[] => {
  const spans: ChainSpan[] = [];
  for (let from = 0; from < parts.length;) {
    const to = endOfSpan(parts, from);
    spans.push({ from, to });
    from = to;
  }
  return spans;
};
