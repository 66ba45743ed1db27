import { isMetric } from '../../units/isMetric.ts';
import type { Rested } from '../../engine/sign/restsOn.ts';
import type { SignedChange } from '../../engine/sign/standing.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { pipeSize } from '../../units/pipeSize.ts';
import { exactStyle } from './exactStyle.ts';
import { phrase } from '../../phrases/phrase.ts';

/** What was signed, what holds now, and how the site writes lengths. */
export interface SignedWords {
  readonly signed: Rested;
  readonly now: Rested;
  readonly style: LengthStyle;
}

type Value = SignedChange['from'];

const leafAt = (what: string): string | null => /^(leaf:[^,]+), /.exec(what)?.[1] ?? null;

const leavesIn = (rested: Rested): string[] => [
  ...new Set(Object.keys(rested).flatMap((what) => leafAt(what) ?? [])),
];

/** What leaves are called: as the terms of the opening call them; one that is gone as it was called. */
const leafNames = ({ signed, now }: SignedWords): ReadonlyMap<string, string> => {
  const named = (rested: Rested): [string, string][] => {
    const ids = leavesIn(rested);
    return ids.map((id, n) => [id, ids.length === 1 ? phrase`Leaf` : phrase`Leaf ${n + 1}`]);
  };
  return new Map([...named(signed), ...named(now)]);
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const thousandths = (value: number, style: LengthStyle): string =>
  isMetric(style.system) ? `${(value * 25.4).toFixed(2)} mm` : `${value.toFixed(3)}"`;

/** How lengths are written so that two that differ never read the same, and by how much is right. */
const writerOf = (what: string, numbers: readonly number[], style: LengthStyle) => {
  if (/\bOD$|, fits /.test(what)) return (value: number) => pipeSize(inches(value), style);
  const own = exactStyle(numbers, style);
  const write = (value: number): string => formatLength(inches(value), own);
  const apart = new Set(numbers.map(write)).size === new Set(numbers).size;
  return apart ? write : (value: number) => thousandths(value, style);
};

/** Names that people gave stand in quotes. */
const valueText = (what: string, value: Value, write: (value: number) => string): string => {
  if (value === null) return phrase`nothing`;
  if (typeof value === 'number') return write(value);
  return /(hinge|latch|closer)$/.test(what) ? `“${value}”` : value;
};

const changeText = ({ what, from, to }: SignedChange, called: string, style: LengthStyle) => {
  const write = writerOf(
    what,
    [from, to].filter((value) => typeof value === 'number'),
    style,
  );
  const [was, is] = [from, to].map((value) => valueText(what, value, write));
  const ends = phrase`${called}: from ${was ?? ''} to ${is ?? ''}`;
  if (typeof from !== 'number' || typeof to !== 'number') return `${ends}.`;
  const by = write(Math.abs(to - from));
  return `${ends}, ${to > from ? phrase`${by} more` : phrase`${by} less`}.`;
};

/** Leaves that only one of two states has. */
const leavesOnlyIn = (one: Rested, other: Rested): string[] => {
  const there = new Set(leavesIn(other));
  return leavesIn(one).filter((id) => !there.has(id));
};

/**
 * What changed since an opening was signed, one sentence a change, from what to what and by how
 * much: leaves by their names, lengths in the site's fine style or so much finer that two which
 * differ read differently. A leaf that came or went is one sentence.
 */
export const changeTexts = (
  changes: readonly SignedChange[],
  words: SignedWords,
): readonly string[] => {
  const names = leafNames(words);
  const [came, gone] = [
    leavesOnlyIn(words.now, words.signed),
    leavesOnlyIn(words.signed, words.now),
  ];
  const whole = new Set([...came, ...gone]);
  const told = changes.flatMap((change): string[] => {
    const leaf = leafAt(change.what);
    if (leaf !== null && whole.has(leaf)) return [];
    const called = leaf === null ? change.what : change.what.replace(leaf, names.get(leaf) ?? leaf);
    return [changeText(change, capital(called), words.style)];
  });
  const name = (id: string): string => names.get(id) ?? id;
  return [
    ...told,
    ...came.map((id) => phrase`${name(id)} was not there when it was signed.`),
    ...gone.map((id) => phrase`${name(id)} that was signed is there no more.`),
  ];
};
