import type { Clash } from './clash.ts';
import {
  bundleOf,
  clashed,
  clashedLost,
  lostOf,
  marksLost,
  mergedPart,
  touched,
  type Combining,
  type Lost,
  type Work,
} from './combining.ts';
import { keyOf, type Part } from './part.ts';
import { refsOf } from './refsOf.ts';

/** Parts of both copies, and where the copies disagree. */
export interface Combined {
  readonly parts: Map<string, Part>;
  readonly clashes: readonly Clash[];
}

const decide = (work: Work, parts: readonly Part[], stay: 'stay' | 'go'): void => {
  for (const part of parts) {
    const key = keyOf(part);
    work.decided.add(key);
    if (stay === 'stay') work.parts.set(key, part);
  }
};

/** Whether what goes with a part was changed by the copy that keeps it. */
const bundleTouched = (work: Work, lost: Lost, bundle: readonly Part[]): boolean => {
  const { keepers, key, keeper } = lost;
  const changed = bundle.some((part) => {
    const was = work.base.get(keyOf(part));
    return was === undefined || touched(work, was, part, keeper);
  });
  const fewer = bundleOf(work.base, key).some(
    (part) => part.owner === key && !keepers.has(keyOf(part)),
  );
  return changed || fewer;
};

/** A line, feature or gate that one copy took out goes or stays with all that is part of it. */
const decideLost = (work: Work, lost: Lost): void => {
  const bundle = bundleOf(lost.keepers, lost.key).filter((part) => !lost.others.has(keyOf(part)));
  const marks = marksLost(work, [lost.kept, ...bundle]);
  const changed =
    marks.length > 0 ||
    touched(work, lost.was, lost.kept, lost.keeper) ||
    bundleTouched(work, lost, bundle);
  const stays = changed && clashedLost(work, lost) === lost.keeper;
  marks.forEach((key) => work.decided.add(key));
  decide(work, [lost.kept, ...bundle], stays ? 'stay' : 'go');
};

/** One id that means things of two kinds: one of them stays, with all that is part of it. */
const decideOtherKind = (work: Work, key: string, first: Part, second: Part): void => {
  const was = work.base.get(key);
  const still = (part: Part, copy: 'first' | 'second'): boolean =>
    was !== undefined && !touched(work, was, part, copy);
  const side = (): 'first' | 'second' => {
    if (still(first, 'first')) return 'second';
    if (still(second, 'second')) return 'first';
    const clash = { is: 'changed apart', key, kind: first.kind, field: 'whole' } as const;
    const fields = { base: was?.fields, first: first.fields, second: second.fields };
    return clashed(work, { ...clash, ...fields });
  };
  const taken = side();
  decide(work, [taken === 'first' ? first : second, ...bundleOf(work[taken], key)], 'stay');
  decide(work, bundleOf(work[taken === 'first' ? 'second' : 'first'], key), 'go');
};

const kindIn = (part: Part): unknown => part.kind === 'features' && part.fields['kind'];

const decideOwners = (work: Work): void => {
  for (const kind of ['lines', 'features', 'gates']) {
    for (const [key, part] of work.base) {
      const lost = part.kind === kind && !work.decided.has(key) ? lostOf(work, key) : null;
      if (lost !== null) decideLost(work, lost);
    }
  }
  for (const [key, first] of work.first) {
    const second = work.second.get(key);
    if (second !== undefined && kindIn(first) !== kindIn(second)) {
      decideOtherKind(work, key, first, second);
    }
  }
};

/** A part that stands by itself, a corner or a leaf that one copy took out. */
const decideSmall = (work: Work, lost: Lost): void => {
  const marks = marksLost(work, [lost.kept]);
  const changed = marks.length > 0 || touched(work, lost.was, lost.kept, lost.keeper);
  const stays = changed && clashedLost(work, lost) === lost.keeper;
  marks.forEach((key) => work.decided.add(key));
  decide(work, [lost.kept], stays ? 'stay' : 'go');
};

const decidePart = (work: Work, key: string): void => {
  const [first, second] = [work.first.get(key), work.second.get(key)];
  if (first !== undefined && second !== undefined) {
    return decide(work, [mergedPart(work, key, first, second)], 'stay');
  }
  const lost = lostOf(work, key);
  if (lost !== null) return decideSmall(work, lost);
  const [alone] = [first, second].filter((part) => part !== undefined);
  if (alone !== undefined) decide(work, [alone], 'stay');
};

/** A mark that one copy moved and the other took out stays where something stands on it. */
const decideMarks = (work: Work): void => {
  const needed = new Set([...work.parts.values()].flatMap(refsOf));
  for (const key of new Set([...work.first.keys(), ...work.second.keys()])) {
    if (!key.startsWith('marks ') || work.decided.has(key)) continue;
    const lost = lostOf(work, key);
    if (lost !== null && needed.has(key)) decide(work, [lost.kept], 'stay');
    else decidePart(work, key);
  }
};

/**
 * The parts of two copies as one: what either added, what either changed, nothing that either took out and the
 * other left alone; and where they disagree, with the picked side taken. What is left may still lean on parts
 * that are gone, and rows of it are in no order yet.
 */
export const combinedParts = (copies: Combining): Combined => {
  const work: Work = { ...copies, parts: new Map(), clashes: [], decided: new Set() };
  decideOwners(work);
  for (const key of new Set([...work.first.keys(), ...work.second.keys()])) {
    if (!key.startsWith('marks ') && !work.decided.has(key)) decidePart(work, key);
  }
  decideMarks(work);
  const { parts, clashes } = work;
  return { parts, clashes };
};
