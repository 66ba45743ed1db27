import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { Site } from '../../site/site.ts';
import type { Layout, LineLayout } from '../layout.ts';
import type { Post } from '../post.ts';
import { fabricPieces, type FabricPiece } from './fabricPieces.ts';

/** A piece of fabric with its build and its posts in turn. */
export interface HungPiece {
  readonly piece: FabricPiece;
  readonly spec: FenceSpec;
  readonly posts: readonly Post[];
}

/** The pieces of fabric of a site, line by line, with their builds and posts. */
export const hungPieces = (
  site: Pick<Site, 'lines' | 'specs'>,
  layout: Pick<Layout, 'lines' | 'posts'>,
): readonly HungPiece[] =>
  Object.values<LineLayout>(layout.lines).flatMap((line) =>
    fabricPieces(site, line, layout.posts).flatMap((piece): HungPiece[] => {
      const spec = site.specs[piece.spec];
      const posts = piece.posts.flatMap((id) => layout.posts.get(id) ?? []);
      return spec === undefined || posts.length < piece.posts.length
        ? []
        : [{ piece, spec, posts }];
    }),
  );
