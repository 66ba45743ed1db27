import type { Merge } from './merged.ts';
import type { PartKind, Parts } from './part.ts';
import { partsOf } from './partsOf.ts';
import { sameFields } from './sameField.ts';

/** What things of a kind are called in a count: one, and several; of what a document says once its name. */
const words: Readonly<Record<PartKind, readonly [one: string, several: string]>> = {
  marks: ['mark', 'marks'],
  lines: ['fence line', 'fence lines'],
  gates: ['gate', 'gates'],
  features: ['feature', 'features'],
  pins: ['post set by hand', 'posts set by hand'],
  shots: ['grade shot', 'grade shots'],
  observations: ['reading', 'readings'],
  acceptances: ['accepted flag', 'accepted flags'],
  townRules: ['rule of a town', 'rules of towns'],
  alternatives: ['alternative', 'alternatives'],
  offcuts: ['length from the yard', 'lengths from the yard'],
  underlays: ['picture', 'pictures'],
  pictures: ['picture in the file', 'pictures in the file'],
  specs: ['fence build', 'fence builds'],
  hardware: ['hinge or latch', 'hinges and latches'],
  corners: ['corner', 'corners'],
  leaves: ['leaf', 'leaves'],
  notes: ['line of level notes', 'lines of level notes'],
  job: ['the job', ''],
  lengths: ['how lengths are written', ''],
  shop: ['how the shop makes leaves', ''],
  counting: ['how things are counted', ''],
  work: ['the work', ''],
  levels: ['how far levels may close off', ''],
  trusts: ['how far readings are trusted', ''],
  conditions: ['ground and wind', ''],
  origin: ['where on earth it is', ''],
};

type Deed = 'added' | 'changed' | 'taken out';

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
  return [...counts.values()].map(({ kind, deed, count }) => {
    const [one, several] = words[kind];
    if (several === '') return `${one} ${deed}`;
    return `${count} ${count === 1 ? one : several} ${deed}`;
  });
};
