import type { Infill } from '../../site/infill.ts';
import { baysOf } from './baysOf.ts';
import type { Counted } from './counted.ts';
import type { HungPiece } from './hungPieces.ts';
import { onPosts, thing } from './thing.ts';

/** How many boards of a width and a gap a length takes: the last one counts whole. Inches. */
const boardsAlong = (length: number, pitch: number): number =>
  Math.max(0, Math.ceil(length / pitch - 1e-9));

/** What a piece of boards on rails is made of: the boards, where they cross the rails, and rails at posts. */
export const boardThings = (
  hung: HungPiece,
  infill: Extract<Infill, { kind: 'boards' }>,
): Counted[] => {
  const { board: label, width, gap, rails } = infill;
  const { fabricHeight: height } = hung.spec;
  const count = boardsAlong(hung.piece.length, width + gap);
  return [
    thing('boards', hung, {}),
    thing('board', hung, { count, sizes: { board: { label, width }, height } }),
    thing('board on a rail', hung, { count: count * rails }),
    ...baysOf(hung).flatMap(({ from, to }) =>
      [from, to].map((post) =>
        thing('board rail at a post', hung, { count: rails, ...onPosts(post) }),
      ),
    ),
  ];
};
