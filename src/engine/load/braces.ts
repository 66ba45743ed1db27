import { isWoven } from '../../site/isWoven.ts';
import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { Pipe } from '../../site/pipe.ts';
import { braceRailFrom } from '../../trade/bracing.ts';
import { schedule40 } from '../../trade/schedule40.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { isTerminal, type Post } from '../post.ts';
import type { FabricPiece } from './fabricPieces.ts';

/** A brace rail from a terminal to the next post, and the terminal that its rod is held to. Inches. */
export interface Brace {
  readonly terminal: Post;
  readonly next: Post;
  readonly pipe: Pipe;
  /** Between the faces of the two posts. */
  readonly length: Inches;
}

/** The pipe of brace rails: that of the top rail, else the usual one, 1-5/8. */
const bracePipe = ({ topRail }: FenceSpec): Pipe => {
  if (topRail !== null) return topRail;
  const { label, od, wall } = schedule40(1.66);
  return { label, od, wall };
};

const isBraced = (spec: FenceSpec): boolean =>
  isWoven(spec) && (spec.topRail === null || spec.fabricHeight >= braceRailFrom.height);

/**
 * The braces of a piece of fabric: from each terminal at its ends to the next post, where its build asks
 * for brace rails at all. Two terminals with one bay between share one.
 */
export const bracesOf = (
  piece: FabricPiece,
  spec: FenceSpec,
  posts: readonly Post[],
): readonly Brace[] => {
  if (!isBraced(spec) || posts.length < 2) return [];
  const pipe = bracePipe(spec);
  const made = (terminal: Post | undefined, next: Post | undefined, bay: number): Brace[] => {
    if (terminal === undefined || next === undefined || !isTerminal(terminal)) return [];
    const length = inches(Math.max(0, bay - (terminal.od + next.od) / 2));
    return [{ terminal, next, pipe, length }];
  };
  const ends = [
    ...made(posts[0], posts[1], piece.bays[0] ?? 0),
    ...made(posts.at(-1), posts.at(-2), piece.bays.at(-1) ?? 0),
  ];
  // the rod of a shared one is held to the thicker post, whichever end the line was drawn from
  return piece.bays.length > 1
    ? ends
    : ends.toSorted((a, b) => b.terminal.od - a.terminal.od).slice(0, 1);
};
