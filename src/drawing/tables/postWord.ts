import type { Post } from '../../engine/post.ts';
import { phrase, phraseOf } from '../../phrases/phrase.ts';

const kinds: Readonly<Record<Post['kind'], string>> = {
  end: phraseOf('post')`end`,
  wall: phraseOf('post')`end at the wall`,
  corner: phraseOf('post')`corner`,
  junction: phraseOf('post')`where lines meet`,
  gate: phraseOf('post')`gate`,
  bend: phraseOf('post')`line, at a bend`,
  line: phraseOf('post')`line`,
  pull: phraseOf('post')`pull`,
  roller: phraseOf('post')`roller`,
  'hold-open': phraseOf('post')`hold-open`,
  stop: phraseOf('post')`stop`,
};

/** What a post is, in the words of a crew: `corner`, `corner, gate`, `line`. */
export const postWord = ({ kind, gates }: Pick<Post, 'kind' | 'gates'>): string =>
  gates.length > 0 && kind !== 'gate' ? phrase`${kinds[kind]}, gate` : kinds[kind];
