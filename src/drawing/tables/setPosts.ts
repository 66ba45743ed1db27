import { hookTag } from './hookTag.ts';
import type { Layout, Run } from '../../engine/layout.ts';
import type { Post, PostId } from '../../engine/post.ts';
import { tapeReadings, type TapeReadings } from '../../engine/posts/tapeReadings.ts';
import type { Site } from '../../site/site.ts';
import { formatLength } from '../../units/formatLength.ts';
import { runName } from '../plan/runName.ts';
import { postWord } from './postWord.ts';
import { shortStyle } from './shortStyle.ts';
import { phrase } from '../../phrases/phrase.ts';
import type { SetColumn } from './setColumns.ts';

/** Every post once, with what is planned of it and blanks for what came of it. */
export interface SetPosts {
  readonly columns: readonly SetColumn[];
  readonly rows: readonly (readonly string[])[];
  /** The tape that each is read by. */
  readonly groups: readonly string[];
}

const columns = ['post', 'what', 'reads', 'set at', 'deep', 'dug to', 'plumb', 'note'] as const;

const row = (post: Post, reads: string, site: Site): string[] => [
  post.tag,
  postWord(post),
  reads,
  '',
  post.wall?.set.kind === 'plate'
    ? phrase`plate`
    : formatLength(post.hole.depth, shortStyle(site.lengths)),
  '',
  '',
  '',
];

const groupOf = (run: Run, layout: Layout, tape: TapeReadings): string =>
  phrase`Tape ${runName(run, layout)}, hooked at ${hookTag(tape, layout)}`;

/**
 * The posts of a set in the order in which the tapes meet them, each by the first tape that it is on;
 * after them those that stand for a gate and are on no tape.
 */
export const setPosts = (site: Site, layout: Layout): SetPosts => {
  const seen = new Set<PostId>();
  const listed: { cells: string[]; group: string }[] = [];
  for (const line of Object.values(layout.lines)) {
    for (const run of line.runs) {
      const tape = tapeReadings(run, site.lines[line.id]?.hook ?? 'start', site.lengths);
      const group = groupOf(run, layout, tape);
      for (const { post: id, reading } of tape.posts) {
        const post = layout.posts.get(id);
        if (post === undefined || seen.has(id)) continue;
        seen.add(id);
        listed.push({ cells: row(post, formatLength(reading, site.lengths), site), group });
      }
    }
  }
  const rest = [...layout.posts.values()].filter(({ id }) => !seen.has(id));
  const beside = rest.map((post) => ({
    cells: row(post, '', site),
    group: phrase`Beside the fence`,
  }));
  const all = [...listed, ...beside];
  return {
    columns,
    rows: all.map(({ cells }) => cells),
    groups: all.map(({ group }) => group),
  };
};
