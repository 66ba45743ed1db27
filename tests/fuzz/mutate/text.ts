import type { TextMutation } from './mutation.ts';

/** Numbers at and past the ends of what a number can be. */
export const oddNumbers = [
  '0',
  '-0',
  '-1',
  '1e999',
  '-1e999',
  '1e308',
  '-1e308',
  '5e-324',
  '1e21',
  '1e-7',
  'NaN',
  'Infinity',
  '-Infinity',
  '0x10',
  '1_000',
  '1,5',
  '1.',
  '.5',
  '007',
  '9007199254740993',
  '4294967296',
  '-2147483649',
  '65536',
  '32767',
  '2147483647',
  '٣',
  '１２',
  '1e',
  '--1',
  '+1',
  '',
];

/** Words with a meaning for a program, a terminal or a reader. */
export const oddWords = [
  '__proto__',
  'constructor',
  'prototype',
  'toString',
  'hasOwnProperty',
  'valueOf',
  '__defineGetter__',
  '',
  ' ',
  '\n',
  '\r\n',
  '\u2028',
  '\u2029',
  '\u0085',
  '\0',
  '\u001b[31m',
  '\u202e',
  '\ufeff',
  '\ud800',
  '\u200b',
  'null',
  'true',
  'undefined',
  '=1+1',
  '@x',
  '${x}',
  '%s%n',
  '../../x',
  '\\',
  '"',
  "'",
  '”',
  'İ',
  'ﬃ',
  '👷🏽',
];

const token = /-?\d+(?:\.\d+)?(?:e[-+]?\d+)?|[A-Za-z_][\w-]*|[^\w\s]|\s+/gi;

const spanned = (text: string, form: RegExp): { at: number; to: number }[] =>
  [...text.matchAll(form)].map((found) => ({ at: found.index, to: found.index + found[0].length }));

const replaced = (text: string, { at, to }: { at: number; to: number }, by: string): string =>
  text.slice(0, at) + by + text.slice(to);

/** A part of a long text, and what stands before and behind it, so that few places are looked at. */
const window = 20_000;

const inWindow =
  (change: TextMutation): TextMutation =>
  (text, random) => {
    if (text.length <= window) return change(text, random);
    const at = random.below(text.length - window);
    return (
      text.slice(0, at) + change(text.slice(at, at + window), random) + text.slice(at + window)
    );
  };

const changeNumber = inWindow((text, random) => {
  const spots = spanned(text, /-?\d+(?:\.\d+)?(?:e[-+]?\d+)?/gi);
  if (spots.length === 0) return random.pick(oddNumbers) + text;
  const spot = random.pick(spots);
  const number = text.slice(spot.at, spot.to);
  const near = [`-${number}`, `${number}0`, `${number}000000000`, `${number}.5`, '9'.repeat(400)];
  return replaced(text, spot, random.pick(random.chance(0.6) ? oddNumbers : near));
});

const changeWord = inWindow((text, random) => {
  const spots = spanned(text, /[A-Za-z_][\w-]*/g);
  if (spots.length === 0) return random.pick(oddWords) + text;
  return replaced(text, random.pick(spots), random.pick(oddWords));
});

const swapTokens = inWindow((text, random) => {
  const spots = spanned(text, token);
  if (spots.length < 2) return text;
  const [one, other] = [random.pick(spots), random.pick(spots)].toSorted((a, b) => a.at - b.at);
  if (one === undefined || other === undefined || one.at === other.at) return text;
  const [a, b] = [text.slice(one.at, one.to), text.slice(other.at, other.to)];
  return text.slice(0, one.at) + b + text.slice(one.to, other.at) + a + text.slice(other.to);
});

const dropToken = inWindow((text, random) => {
  const spots = spanned(text, token);
  return spots.length === 0 ? text : replaced(text, random.pick(spots), '');
});

const lengthen = inWindow((text, random) => {
  const spots = spanned(text, token);
  if (spots.length === 0) return text;
  const spot = random.pick(spots);
  const times = random.pick([2, 50, 3000, 60_000]);
  const part = text.slice(spot.at, Math.min(spot.to, spot.at + 5));
  return replaced(text, spot, part.repeat(times));
});

const insert = inWindow((text, random) => {
  const at = random.below(text.length);
  return text.slice(0, at) + random.pick(oddWords) + text.slice(at);
});

/** What repeats a text makes it no longer than this: what is behind would be cut off. */
const mostText = 1_000_000;

const swapLines: TextMutation = (text, random) => {
  const lines = text.split('\n');
  const [a, b] = [random.below(lines.length), random.below(lines.length)];
  const [one = '', other = ''] = [lines[a], lines[b]];
  lines[a] = other;
  lines[b] = one;
  return lines.join('\n');
};

const dropLine: TextMutation = (text, random) => {
  const lines = text.split('\n');
  lines.splice(random.below(lines.length), 1 + random.below(3));
  return lines.join('\n');
};

const repeatLines: TextMutation = (text, random) => {
  const lines = text.split('\n');
  const at = random.below(lines.length);
  const some = lines.slice(at, at + 1 + random.below(12));
  const room = Math.ceil(mostText / (some.join('\n').length + 1));
  const times = Math.min(room, random.pick([1, 1, 3, 500]));
  return [
    ...lines.slice(0, at),
    ...Array.from({ length: times }, () => some).flat(),
    ...lines.slice(at),
  ].join('\n');
};

/** Ways to spoil any text. */
export const textMutations: readonly TextMutation[] = [
  changeNumber,
  changeNumber,
  changeWord,
  swapTokens,
  dropToken,
  lengthen,
  insert,
  swapLines,
  dropLine,
  repeatLines,
];
