import { distance } from '../../geometry/distance.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Post } from '../post.ts';
import type { HungPiece } from './hungPieces.ts';

/** One bay of a piece of fence: its posts, and how wide it is from centre to centre and from face to face. */
export interface HungBay {
  readonly from: Post;
  readonly to: Post;
  readonly length: Inches;
  readonly clear: Inches;
}

/**
 * The bays of a piece in turn; inches. What is clear is measured in plan where the piece is level, else along
 * the grade; below zero it counts as none.
 */
export const baysOf = ({ piece, posts }: HungPiece): HungBay[] =>
  piece.bays.flatMap((length, n): HungBay[] => {
    const [from, to] = [posts[n], posts[n + 1]];
    if (from === undefined || to === undefined) return [];
    const apart = piece.level ? distance(from.at, to.at) : length;
    const clear = inches(Math.max(0, apart - (from.od + to.od) / 2));
    return [{ from, to, length, clear }];
  });
