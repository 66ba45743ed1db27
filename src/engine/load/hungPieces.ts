import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { Site } from '../../site/site.ts';
import { newCarry, type Carry } from '../carry/carry.ts';
import type { Layout, LineLayout } from '../layout.ts';
import type { Post } from '../post.ts';
import { fabricPieces, type FabricPiece } from './fabricPieces.ts';

/** A piece of fabric with its build and its posts in turn. */
export interface HungPiece {
  readonly piece: FabricPiece;
  readonly spec: FenceSpec;
  readonly posts: readonly Post[];
}

type Hung = Pick<Layout, 'lines' | 'posts'>;

const hungOn = (
  site: Pick<Site, 'lines' | 'specs'>,
  line: LineLayout,
  { posts: all }: Hung,
): readonly HungPiece[] =>
  fabricPieces(site, line, all).flatMap((piece): HungPiece[] => {
    const spec = site.specs[piece.spec];
    const posts = piece.posts.flatMap((id) => all.get(id) ?? []);
    return spec === undefined || posts.length < piece.posts.length ? [] : [{ piece, spec, posts }];
  });

/**
 * The pieces of fabric of a site, line by line, with their builds and posts; the very same list where nothing
 * of it has changed.
 */
export const hungPieces = (
  site: Pick<Site, 'lines' | 'specs'>,
  layout: Hung,
  carry: Carry = newCarry(),
): readonly HungPiece[] => {
  const known = carry.shelf<readonly HungPiece[]>('hung pieces of a line');
  const all = Object.values<LineLayout>(layout.lines).map((line) => {
    const posts = line.runs.flatMap((run) => run.posts.map(({ post }) => layout.posts.get(post)));
    const from = [line, site.lines[line.id], site.specs, ...posts];
    return known.take(line.id, from, () => hungOn(site, line, layout));
  });
  return carry.shelf<readonly HungPiece[]>('hung pieces').take('', all, () => all.flat());
};
