import { flagName } from '../../drawing/plan/drawFlags.ts';
import type { Layout } from '../../engine/layout.ts';
import type { Post } from '../../engine/post.ts';
import type { MarkId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import type { Selection } from '../../store/selection.ts';
import type { ListRow } from './listRow.ts';
import { placeWords } from './rowWords.ts';
import { phrase, phraseOf, sentenceCase } from '../../phrases/phrase.ts';

/** What a post is selected as: itself between terminals, else the gate or the mark that it stands for. */
const selectionOf = (
  site: Site,
  { id, kind, gates, lines }: Post,
): NonNullable<Selection> | null => {
  if (kind === 'line' || kind === 'pull') return { kind: 'post', id };
  const mark = id.slice('post:'.length) as MarkId;
  if (mark in site.marks) return { kind: 'mark', id: mark };
  if (gates[0] !== undefined) return { kind: 'gate', id: gates[0] };
  return lines[0] === undefined ? null : { kind: 'line', id: lines[0] };
};

const postWords: Readonly<Record<Post['kind'], string>> = {
  end: phrase`end post`,
  wall: phrase`wall post`,
  corner: phrase`corner post`,
  junction: phrase`junction post`,
  gate: phrase`gate post`,
  bend: phrase`bend post`,
  line: phrase`line post`,
  pull: phrase`pull post`,
  roller: phrase`roller post`,
  'hold-open': phrase`hold open post`,
  stop: phrase`stop post`,
};

/** Every post by its tag, what it is and where, in the order in which sheets name them. */
export const postRows = (site: Site, { posts }: Pick<Layout, 'posts'>): ListRow[] =>
  [...posts.values()].flatMap((post): ListRow[] => {
    const selection = selectionOf(site, post);
    if (selection === null) return [];
    const kind = postWords[post.kind];
    const words = phrase`Post ${post.tag}: ${kind}, ${post.pipe}, ${placeWords(post.at, site.lengths)}`;
    return [{ key: post.id, words, selection, at: post.at, rows: [] }];
  });

const levels = ['stop', 'settle', 'caution'] as const;

const levelWords: Readonly<Record<(typeof levels)[number], string>> = {
  stop: phraseOf('flag')`stop`,
  settle: phraseOf('flag')`settle`,
  caution: phraseOf('flag')`caution`,
};

/** Every flag by its name and what it says, the gravest first; selected is what it stands on. */
export const flagRows = ({ flags }: Pick<Layout, 'flags'>): ListRow[] => {
  const named = flags.map((flag, n) => ({ flag, name: flagName(n) }));
  const ranked = levels.flatMap((level) => named.filter(({ flag }) => flag.level === level));
  return ranked.map(({ flag, name }) => ({
    key: name,
    words: phrase`${sentenceCase(levelWords[flag.level])} ${name}: ${flag.message}`,
    selection: flag.place,
    at: flag.at,
    rows: [],
  }));
};
