import type { Merge } from './merged.ts';
import type { PartKind, Parts } from './part.ts';
import { partsOf } from './partsOf.ts';
import { sameFields } from './sameField.ts';
import { phrase } from '../../phrases/phrase.ts';

/** How many things of a kind; of what a document says once its name. */
const words: Readonly<Record<PartKind, (count: number) => string>> = {
  marks: (count) => (count === 1 ? phrase`1 mark` : phrase`${count} marks`),
  lines: (count) => (count === 1 ? phrase`1 fence line` : phrase`${count} fence lines`),
  gates: (count) => (count === 1 ? phrase`1 gate` : phrase`${count} gates`),
  features: (count) => (count === 1 ? phrase`1 feature` : phrase`${count} features`),
  pins: (count) => (count === 1 ? phrase`1 post set by hand` : phrase`${count} posts set by hand`),
  shots: (count) => (count === 1 ? phrase`1 grade shot` : phrase`${count} grade shots`),
  observations: (count) => (count === 1 ? phrase`1 reading` : phrase`${count} readings`),
  acceptances: (count) => (count === 1 ? phrase`1 accepted flag` : phrase`${count} accepted flags`),
  townRules: (count) => (count === 1 ? phrase`1 rule of a town` : phrase`${count} rules of towns`),
  alternatives: (count) => (count === 1 ? phrase`1 alternative` : phrase`${count} alternatives`),
  offcuts: (count) =>
    count === 1 ? phrase`1 length from the yard` : phrase`${count} lengths from the yard`,
  underlays: (count) => (count === 1 ? phrase`1 picture` : phrase`${count} pictures`),
  pictures: (count) =>
    count === 1 ? phrase`1 picture in the file` : phrase`${count} pictures in the file`,
  specs: (count) => (count === 1 ? phrase`1 fence build` : phrase`${count} fence builds`),
  hardware: (count) =>
    count === 1 ? phrase`1 hinge or latch` : phrase`${count} hinges and latches`,
  corners: (count) => (count === 1 ? phrase`1 corner` : phrase`${count} corners`),
  leaves: (count) => (count === 1 ? phrase`1 leaf` : phrase`${count} leaves`),
  notes: (count) =>
    count === 1 ? phrase`1 line of level notes` : phrase`${count} lines of level notes`,
  job: () => phrase`the job`,
  lengths: () => phrase`how lengths are written`,
  shop: () => phrase`how the shop makes leaves`,
  counting: () => phrase`how things are counted`,
  work: () => phrase`the work`,
  levels: () => phrase`how far levels may close off`,
  trusts: () => phrase`how far readings are trusted`,
  conditions: () => phrase`ground and wind`,
  origin: () => phrase`where on earth it is`,
};

type Deed = 'added' | 'changed' | 'taken out';

const deedWords: Readonly<Record<Deed, (things: string) => string>> = {
  added: (things) => phrase`${things} added`,
  changed: (things) => phrase`${things} changed`,
  'taken out': (things) => phrase`${things} taken out`,
};

/** The part that a corner or leaf is counted with: what it is part of. */
const countedKey = (parts: Parts, key: string): string => {
  const owner = parts.get(key)?.owner ?? '';
  return owner === '' ? key : owner;
};

/** What a copy did to each thing since `before`, but for what is in conflict. */
const deedsOf = (before: Parts, after: Parts, conflicts: ReadonlySet<string>) => {
  const deeds = new Map<string, Deed>();
  for (const key of new Set([...before.keys(), ...after.keys()])) {
    if (conflicts.has(key)) continue;
    const [was, is] = [before.get(key), after.get(key)];
    if (was !== undefined && is !== undefined && sameFields(was.fields, is.fields)) continue;
    const thing = countedKey(is === undefined ? before : after, key);
    if (conflicts.has(thing)) continue;
    if (!before.has(thing)) deeds.set(thing, 'added');
    else deeds.set(thing, after.has(thing) ? 'changed' : 'taken out');
  }
  return deeds;
};

const none: ReadonlySet<string> = new Set();

/**
 * What came of the other copy without a conflict, a line for each kind of thing: `2 gates added`,
 * `the job changed`. Told against what both came from; where nobody knows it, against mine, and nothing is
 * taken out. Empty where nothing came.
 */
export const cameTexts = ({ copies, mine, theirs, conflicts }: Merge): readonly string[] => {
  const before = partsOf(copies.base ?? mine, none);
  const after = partsOf(theirs, none);
  const keys = new Set(conflicts.map(({ key }) => key));
  const counts = new Map<string, { kind: PartKind; deed: Deed; count: number }>();
  for (const [key, deed] of deedsOf(before, after, keys)) {
    const part = after.get(key) ?? before.get(key);
    if (part === undefined || (copies.base === null && deed === 'taken out')) continue;
    const name = `${part.kind} ${deed}`;
    const known = counts.get(name) ?? { kind: part.kind, deed, count: 0 };
    counts.set(name, { ...known, count: known.count + 1 });
  }
  return [...counts.values()].map(({ kind, deed, count }) => deedWords[deed](words[kind](count)));
};
