import type { Post } from '../../engine/post.ts';

const kinds: Readonly<Record<Post['kind'], string>> = {
  end: 'end',
  wall: 'end at the wall',
  corner: 'corner',
  junction: 'where lines meet',
  gate: 'gate',
  bend: 'line, at a bend',
  line: 'line',
  pull: 'pull',
  roller: 'roller',
  'hold-open': 'hold-open',
  stop: 'stop',
};

/** What a post is, in the words of a crew: `corner`, `corner, gate`, `line`. */
export const postWord = ({ kind, gates }: Pick<Post, 'kind' | 'gates'>): string =>
  gates.length > 0 && kind !== 'gate' ? `${kinds[kind]}, gate` : kinds[kind];
