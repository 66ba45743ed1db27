import { cameTexts } from '../../site/merge/cameTexts.ts';
import type { Conflict } from '../../site/merge/conflict.ts';
import { merged, settled, type Merge, type Side } from '../../site/merge/merged.ts';
import { saveSite } from '../../site/saveSite.ts';
import type { Site } from '../../site/site.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { valueOf, type Call } from '../call.ts';
import { choiceOf } from '../choiceOf.ts';
import type { Io } from '../io.ts';
import { readDocument } from '../readSite.ts';
import type { Answer, Verb } from '../verb.ts';
import { phrase } from '../../phrases/phrase.ts';

const sides: readonly Side[] = ['mine', 'theirs'];

const conflictLines = ({ what, mine, theirs }: Conflict): readonly string[] => [
  what,
  `  ${phrase`mine:   ${mine.words}`}`,
  `  ${phrase`theirs: ${theirs.words}`}`,
];

const countText = (count: number): string =>
  count === 1 ? phrase`1 conflict` : phrase`${count} conflicts`;

const textOf = (merge: Merge, take: Side | null, file: string): string => {
  const { conflicts } = merge;
  const came = cameTexts(merge);
  const open = take === null && conflicts.length > 0;
  return [
    came.length === 0
      ? phrase`theirs: nothing that mine has not`
      : phrase`theirs: ${came.join(', ')}`,
    ...conflicts.flatMap(conflictLines),
    ...(conflicts.length === 0 ? [] : [`${countText(conflicts.length)}; ${takenText(take)}`]),
    open ? phrase`${file} has mine of each` : phrase`wrote ${file}`,
  ].join('\n');
};

const takenText = (take: Side | null): string =>
  take === null ? phrase`no side was named: --take mine or --take theirs` : phrase`taken: ${take}`;

const jsonOf = (merge: Merge, take: Side | null): unknown => ({
  came: cameTexts(merge),
  conflicts: merge.conflicts.map(({ id, is, key, field, what, mine, theirs }) => ({
    id,
    is,
    key,
    field,
    what,
    mine: mine.words,
    theirs: theirs.words,
  })),
  taken: take,
});

const baseIn = async (io: Io, call: Call): Promise<Parsed<Site | null>> => {
  const path = valueOf(call, 'base');
  return path === null ? read(null) : readDocument(io, path);
};

const run = async (call: Call, io: Io): Promise<Parsed<Answer>> => {
  const [minePath = '', theirsPath = ''] = call.places;
  const take = choiceOf(call, 'take', sides);
  if (!take.ok) return take;
  const file = valueOf(call, 'out') ?? '';
  if (file === '') return unread(phrase`--out: expected the file to write, found nothing`);
  const mine = await readDocument(io, minePath);
  if (!mine.ok) return mine;
  const theirs = await readDocument(io, theirsPath);
  if (!theirs.ok) return theirs;
  const base = await baseIn(io, call);
  if (!base.ok) return base;
  const merge = merged(base.value, mine.value, theirs.value);
  const side = take.value ?? 'mine';
  const site = settled(merge, new Map(merge.conflicts.map(({ id }) => [id, side])));
  const written = await io.writeFile(file, saveSite(site));
  if (!written.ok) return written;
  return read({
    text: textOf(merge, take.value, file),
    json: jsonOf(merge, take.value),
    stopped: take.value === null && merge.conflicts.length > 0,
  });
};

/** `merge`: two copies of one document, changed apart, as one. */
export const merge: Verb = {
  name: 'merge',
  does: phrase`merges two copies of one document that were changed apart`,
  places: ['MINE', 'THEIRS'],
  options: [
    {
      name: 'base',
      value: 'SITE',
      needed: false,
      repeats: false,
      does: phrase`what both came from; without it every difference of a field is a conflict`,
    },
    {
      name: 'take',
      value: 'SIDE',
      needed: false,
      repeats: false,
      does: phrase`whose value of each conflict: mine or theirs`,
    },
    { name: 'out', value: 'FILE', needed: true, repeats: false, does: phrase`the file to write` },
  ],
  run,
};
