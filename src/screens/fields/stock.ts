import type { Pipe } from '../../site/pipe.ts';
import type { PostPipe } from '../../site/postPipe.ts';
import { roundPost } from '../../site/roundPost.ts';
import { fencePipes } from '../../trade/pipes.ts';
import { squarePosts } from '../../trade/squarePosts.ts';

/** Pipe of the tables as a document has it: for rails and frames. */
export const pipeStock: readonly Pipe[] = fencePipes.map(({ label, od, wall }) => ({
  label,
  od,
  wall,
}));

/** Posts of the tables as a document has them: round pipe, then square ones. */
export const postStock: readonly PostPipe[] = [
  ...pipeStock.map(roundPost),
  ...squarePosts.map(({ label, od, wall }): PostPipe => ({ label, od, wall, section: 'square' })),
];
