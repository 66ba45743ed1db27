import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { Gate } from '../../site/gate.ts';
import type { PostPipe } from '../../site/postPipe.ts';
import type { Site } from '../../site/site.ts';
import type { Post } from '../post.ts';
import { solidAtMost } from './solidAtMost.ts';

/** The pipe of a post as the builds and gates that it serves say it; null where none of them is that thick. */
export const pipeOf = (
  { specs, lines, gates }: Pick<Site, 'specs' | 'lines' | 'gates'>,
  post: Pick<Post, 'od' | 'section' | 'pipe' | 'lines' | 'gates'>,
): PostPipe | null => {
  const built = post.lines.flatMap((id): FenceSpec[] => {
    const spec = specs[lines[id]?.spec ?? 'spec:'];
    return spec === undefined ? [] : [spec];
  });
  const all = [
    ...post.gates.map((id) => (gates[id] as Gate | undefined)?.post ?? null),
    ...built.flatMap(({ gatePost, terminalPost, linePost }) => [gatePost, terminalPost, linePost]),
  ];
  const own =
    all.find(
      (one) => one?.od === post.od && one.section === post.section && one.label === post.pipe,
    ) ?? null;
  return own === null ? null : solidAtMost(own);
};
