import { clashIdOf, type Clash, type Pick } from './clash.ts';
import type { CopyParts } from './freshIds.ts';
import { innerParts } from './innerParts.ts';
import { keyOf, type Fields, type Part, type Parts } from './part.ts';
import { lineUnder, refsOf } from './refsOf.ts';
import { sameField, sameFields } from './sameField.ts';

/** What is combined, and how the caller answers where the copies disagree. */
export interface Combining extends CopyParts {
  readonly pick: Pick;
  /** Whether a gate or pin stands in a copy where it stood, though it may be told from elsewhere. */
  readonly stoodStill: (part: Part, copy: 'first' | 'second') => boolean;
}

/** A merge that is under way: the parts that stay so far, and what has been decided. */
export interface Work extends Combining {
  readonly parts: Map<string, Part>;
  readonly clashes: Clash[];
  /** Keys of which it is said whether they stay. */
  readonly decided: Set<string>;
}

/** A part that one copy took out, as it was and as the copy that keeps it has it. */
export interface Lost {
  readonly key: string;
  readonly was: Part;
  readonly kept: Part;
  readonly keeper: 'first' | 'second';
  readonly keepers: Parts;
  readonly others: Parts;
}

/** A part that one copy alone took out; null where none or both did, and for one that is new. */
export const lostOf = ({ base, first, second }: CopyParts, key: string): Lost | null => {
  const was = base.get(key);
  const [one, two] = [first.get(key), second.get(key)];
  if (was === undefined || (one === undefined) === (two === undefined)) return null;
  if (one !== undefined) {
    return { key, was, kept: one, keeper: 'first', keepers: first, others: second };
  }
  if (two === undefined) return null;
  return { key, was, kept: two, keeper: 'second', keepers: second, others: first };
};

/** Writes a disagreement down. Whose side is taken is the answer. */
export const clashed = ({ clashes, pick }: Work, clash: Omit<Clash, 'id'>): 'first' | 'second' => {
  const id = clashIdOf(clash.key, clash.field);
  clashes.push({ ...clash, id });
  return pick(id);
};

/** The disagreement about a part that one copy took out, as a whole. */
export const clashedLost = (work: Work, { key, was, kept, keeper }: Lost): 'first' | 'second' =>
  clashed(work, {
    is: 'taken out',
    key,
    kind: kept.kind,
    field: 'whole',
    base: was.fields,
    first: keeper === 'first' ? kept.fields : undefined,
    second: keeper === 'second' ? kept.fields : undefined,
  });

/** Whether a field of a part says what it said; one of a part that is new says nothing yet. */
const unchanged = (was: Part | undefined, part: Part, name: string): boolean =>
  sameField(name, was?.fields[name], part.fields[name]);

/** Whether a field tells otherwise where a gate or pin stands that has not moved. */
const toldOtherwise = (
  { stoodStill }: Combining,
  [copy, part, name]: readonly ['first' | 'second', Part, string],
): boolean => name === 'place' && lineUnder(part) !== null && stoodStill(part, copy);

/** Whether a copy changed anything of a part that was there. */
export const touched = (
  work: Combining,
  was: Part,
  part: Part,
  copy: 'first' | 'second',
): boolean =>
  !sameFields(was.fields, part.fields) &&
  [...new Set([...Object.keys(was.fields), ...Object.keys(part.fields)])].some(
    (name) =>
      name !== 'order' && !unchanged(was, part, name) && !toldOtherwise(work, [copy, part, name]),
  );

/** A part that both copies have, field by field; where both changed a field it is a disagreement. */
export const mergedPart = (work: Work, key: string, first: Part, second: Part): Part => {
  const was = work.base.get(key);
  const valueOf = (name: string): unknown => {
    const [one, two] = [first.fields[name], second.fields[name]];
    if (sameField(name, one, two)) return one;
    if (unchanged(was, first, name)) return two;
    // what order a thing has in a row is settled for the whole row
    if (unchanged(was, second, name) || name === 'order') return one;
    if (toldOtherwise(work, ['first', first, name])) return two;
    if (toldOtherwise(work, ['second', second, name])) return one;
    const base = was?.fields[name];
    const clash = { is: 'changed apart', key, kind: first.kind, field: name, base } as const;
    return clashed(work, { ...clash, first: one, second: two }) === 'first' ? one : two;
  };
  const names = [...new Set([...Object.keys(first.fields), ...Object.keys(second.fields)])];
  const fields = names.flatMap((name) => {
    const value = valueOf(name);
    return value === undefined ? [] : [[name, value] as const];
  });
  return { ...first, fields: Object.fromEntries(fields) as Fields };
};

/** What goes with a part: its corners or leaves, and of a line what stands on it, with its leaves. */
export const bundleOf = (parts: Parts, key: string): readonly Part[] => {
  const inner = innerParts(parts);
  const own = inner.get(key) ?? [];
  if (!key.startsWith('lines ')) return own;
  const standing = [...parts.values()].filter((part) => lineUnder(part) === key);
  return [...own, ...standing, ...standing.flatMap((part) => inner.get(keyOf(part)) ?? [])];
};

/** Marks that some parts stand on, that one copy moved and the other took out. */
export const marksLost = (work: Work, parts: readonly Part[]): readonly string[] =>
  parts.flatMap(refsOf).filter((key) => {
    const lost = key.startsWith('marks ') ? lostOf(work, key) : null;
    return lost !== null && touched(work, lost.was, lost.kept, lost.keeper);
  });
