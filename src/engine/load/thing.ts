import type { Basis } from '../../trade/countRules.ts';
import type { Post } from '../post.ts';
import type { Counted } from './counted.ts';
import type { HungPiece } from './hungPieces.ts';

/** A thing of a piece of fence, as long as that and counted once on its line, but for what is told of it. */
export const thing = (basis: Basis, hung: HungPiece, more: Partial<Counted>): Counted => ({
  basis,
  count: 1,
  length: hung.piece.length,
  sizes: {},
  on: { posts: [], lines: [hung.piece.line], gates: [] },
  ...more,
});

/** What a thing is on that belongs to posts. */
export const onPosts = (...posts: readonly Post[]): Pick<Counted, 'on'> => ({
  on: { posts: posts.map(({ id }) => id), lines: [], gates: [] },
});
