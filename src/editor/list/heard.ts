import type { Selection } from '../../store/selection.ts';
import { isSame } from '../hit.ts';
import { withAllRows, type ListGroup, type ListRow } from './listRow.ts';
import { rowOf } from './rowOf.ts';
import { englishOf, phrase, phraseOf } from '../../phrases/phrase.ts';

/** The yard in words at one moment, and what is selected in it. */
export interface Told {
  readonly groups: readonly ListGroup[];
  readonly selection: Selection;
}

/** So many things are named; of more only their number is told. */
const mostNamed = 3;

/** Posts and flags follow from everything: of them numbers are told. */
const counted = ['posts', 'flags'] as const;

const isCounted = ({ key }: ListGroup): boolean => (counted as readonly string[]).includes(key);

const drawn = (groups: readonly ListGroup[]): ReadonlyMap<string, ListRow> =>
  new Map(
    groups
      .filter((group) => !isCounted(group))
      .flatMap(({ rows }) => rows.flatMap((row) => withAllRows(row)))
      .map((row) => [row.key, row]),
  );

/** Posts are lettered anew with every post that is set: that alone is no change to be told. */
const untagged = (words: string): string => englishOf(words).replace(/\bpost [A-Z]+\b/gi, 'post');

const named = (verb: string, rows: readonly ListRow[]): string[] => {
  if (rows.length === 0) return [];
  const [first, rest] = [rows.slice(0, mostNamed), rows.slice(mostNamed)];
  const names = first.map(({ words }) => words).join('; ');
  const all = rest.length === 0 ? names : phrase`${names}; and ${rest.length} more`;
  return [`${verb}: ${all}`];
};

const countOf = (groups: readonly ListGroup[], key: ListGroup['key']): number =>
  groups.find((group) => group.key === key)?.rows.length ?? 0;

const countWords: Readonly<Record<(typeof counted)[number], (count: number) => string>> = {
  posts: (count) => (count === 1 ? phrase`1 post` : phrase`${count} posts`),
  flags: (count) => (count === 1 ? phrase`1 flag` : phrase`${count} flags`),
};

const counts = (before: readonly ListGroup[], after: readonly ListGroup[]): string[] =>
  counted.flatMap((key) => {
    const now = countOf(after, key);
    return now === countOf(before, key) ? [] : [countWords[key](now)];
  });

/**
 * What one hears of an edit and of another selection: the edit by its label, then what is new, what has
 * changed and what is gone, each by its name and its figures, then how many posts and flags there are if
 * that is another number. Empty where there is nothing to tell.
 */
export const heard = (before: Told, after: Told, label: string | null): string => {
  const [was, now] = [drawn(before.groups), drawn(after.groups)];
  const added = [...now.values()].filter(({ key }) => !was.has(key));
  const changed = [...now.values()].filter(({ key, words }) => {
    const old = was.get(key)?.words;
    return old !== undefined && untagged(old) !== untagged(words);
  });
  const gone = [...was.values()].filter(({ key }) => !now.has(key));
  const chosen = rowOf(after.groups, after.selection);
  const told = [...added.slice(0, mostNamed), ...changed.slice(0, mostNamed)];
  const same =
    isSame(before.selection, after.selection) || (chosen !== null && told.includes(chosen));
  const letGo = before.selection !== null && after.selection === null && label === null;
  const parts = [
    ...(label === null ? [] : [label]),
    ...named(phraseOf('heard')`New`, added),
    ...named(phraseOf('heard')`Now`, changed),
    ...named(phraseOf('heard')`Gone`, gone),
    ...counts(before.groups, after.groups),
    ...(same || chosen === null ? [] : [phrase`Selected: ${chosen.words}`]),
    ...(letGo ? [phrase`Nothing is selected`] : []),
  ];
  return parts.join('. ');
};
