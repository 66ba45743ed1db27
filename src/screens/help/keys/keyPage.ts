import { toolbox } from '../../../editor/toolbox.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { fieldKeys } from '../../fields/fieldKeys.ts';
import { entryKeys } from '../../yard/entryKeys.ts';
import { listKeys, rowKeys } from '../../yard/list/rowKeys.ts';
import { figureKeys, padKeys } from '../../yard/padKeys.ts';
import { gestureIds, gestures, type Gesture } from './gestures.ts';
import { chordNames } from './keyName.ts';
import type { KeyRow } from './keyRow.ts';
import { browserKeys, programKeys } from './programKeys.ts';

/** One line of the page: keys or gestures, any of which will do, and what they do. */
export interface PageRow {
  readonly how: readonly string[];
  readonly does: string;
}

/** Lines that belong together. */
export interface PageGroup {
  readonly title: string;
  readonly rows: readonly PageRow[];
}

const lineOf = (row: KeyRow<unknown>): PageRow => ({ how: chordNames(row), does: row.does });

/** The keys that take up tools, as the toolbox has them. */
const toolKeys: readonly KeyRow<string>[] = toolbox.map(({ id, key, label }) => ({
  keys: [key],
  deed: id,
  does: label,
}));

const made = (by: Gesture['with']): readonly PageRow[] =>
  gestureIds
    .filter((id) => gestures[id].with === by)
    .map((id) => ({ how: [gestures[id].how], does: gestures[id].does }));

const gesturePage: readonly PageGroup[] = [
  { title: phrase`By touch`, rows: made('touch') },
  { title: phrase`By pen`, rows: made('pen') },
  { title: phrase`By mouse`, rows: made('mouse') },
  { title: phrase`On the tape`, rows: made('any') },
];

const keysPage: readonly PageGroup[] = [
  { title: phrase`On every screen`, rows: [...programKeys, ...browserKeys].map(lineOf) },
  { title: phrase`Tools of the yard`, rows: toolKeys.map(lineOf) },
  { title: phrase`On the pad`, rows: [...padKeys, ...figureKeys].map(lineOf) },
  { title: phrase`While a figure is typed over the pad`, rows: entryKeys.map(lineOf) },
  { title: phrase`In a field`, rows: fieldKeys.map(lineOf) },
  { title: phrase`In the list of the yard`, rows: [...rowKeys, ...listKeys].map(lineOf) },
];

/** Every key and gesture of the program, in groups, from where each is heard: those of the hand first that one has. */
export const keyPage = (hand: 'fingers' | 'keys'): readonly PageGroup[] =>
  hand === 'fingers' ? [...gesturePage, ...keysPage] : [...keysPage, ...gesturePage];

/** Small, and without accents, so that what is looked for is found however it is typed. */
const bare = (text: string): string =>
  text.normalize('NFD').replaceAll(/\p{M}/gu, '').toLowerCase();

const has = (words: readonly string[], text: string): boolean =>
  words.every((word) => bare(text).includes(word));

/** The lines of the page that have every word of a text, of a group all where its title has them; groups with none are left out. */
export const foundOn = (page: readonly PageGroup[], text: string): readonly PageGroup[] => {
  const words = bare(text).split(/\s+/).filter(Boolean);
  return page
    .map(({ title, rows }) => ({
      title,
      rows: rows.filter(({ how, does }) => has(words, [title, ...how, does].join(' '))),
    }))
    .filter(({ rows }) => rows.length > 0);
};
