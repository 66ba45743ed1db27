import { plainDeed, smallLetters } from '../../units/plainDeed.ts';
import { readCall } from './readCall.ts';
import { thence } from './thence.ts';

/** A piece of a text that stands for itself: a line of a list, or a clause of a deed. */
export interface Clause {
  /** The line in which it begins, counted from 1. */
  readonly line: number;
  /** On one line. */
  readonly text: string;
  /** `call`: it begins as a call does, by `thence` or on a line of a list. `goes on`: within one. */
  readonly begins: 'call' | 'start' | 'goes on';
}

interface Span {
  readonly at: number;
  readonly text: string;
}

/** Where clauses of a deed begin, in small letters. */
const places: readonly RegExp[] = [
  new RegExp(thence, 'g'),
  /(?<![a-z])(?<!of )(?:beginning|commencing|beg\.?|com\.?) (?:for the same )?(?:at|on|in|from|for)(?![a-z])/g,
  /(?<!thence,? )(?<![a-z])(?:and )?running (?=(?:from \w+ \w+ )?(?:due |north|south|[ns][. \d]))/g,
  /(?<![a-z])containing(?![a-z])/g,
  /(?<=;)/g,
  /(?<=(?:point|place) of (?:beginning|commencement|commencing)"?[.,])/g,
  /\n(?=[^\S\n]*\n)/g,
];
/** Where a sentence ends: not behind the point of `ft.` or `N.` */
const sentences = /(?<=[A-Za-z]{4}\.)\s+(?=[A-Z])/g;

const called = new RegExp(`^[^a-z]*${thence}`);
const anyThence = new RegExp(thence);
const everyThence = new RegExp(thence, 'g');
const starts = /^[^a-z]*(?:beginning|commencing|beg\.?|com\.?) /;
/** A line that begins with a call, with or without a number of its own. */
const callLine =
  /^\s*(?:\(?(?:course )?[\da-z]{1,3}[.):]\s+)?(?:(?:north|south|n|s)[. ]{0,2}\d|(?:north|south|east|west) |due )/;
/** What a call does not end with. */
const unended =
  /(?:bearing|bears|chord|distance|of|is|an?|the|and|to|at|from|along|with|thence,?)$/;

const isWhole = (text: string): boolean => {
  const call = readCall(text.replaceAll('\n', ' '), 1);
  return call.ok && call.value !== null;
};

const indexesOf = (text: string, form: RegExp): number[] =>
  [...text.matchAll(form)].map(({ index }) => index);

/** Whether every `thence` begins a line that is a call by itself, so that each line stands for itself. */
const isListed = (small: string): boolean =>
  small
    .split('\n')
    .filter((line) => anyThence.test(line))
    .every(
      (line) => called.test(line) && indexesOf(line, everyThence).length === 1 && isWhole(line),
    );

/** Cuts a text, which stands at a place of a longer one, before each of some places. */
const cut = ({ at, text }: Span, before: readonly number[]): readonly Span[] => {
  const all = [...new Set([0, ...before, text.length])].toSorted((a, b) => a - b);
  return all.slice(1).map((to, n) => ({ at: at + (all[n] ?? 0), text: text.slice(all[n], to) }));
};

/** The lines of a clause, cut again where a call has ended and the next line begins another. */
const linesApart = (span: Span): readonly Span[] => {
  const { text } = span;
  let from = 0;
  const ends = indexesOf(text, /\n/g).filter((index) => {
    if (!callLine.test(text.slice(index + 1, index + 60))) return false;
    const before = text.slice(from, index);
    const ended = !unended.test(before.trimEnd()) && (!/\d/.test(before) || isWhole(before));
    if (ended) from = index;
    return ended;
  });
  return cut(span, ends);
};

interface Cut {
  /** A list line by line, or a deed. */
  readonly as: 'list' | 'deed';
  readonly spans: readonly Span[];
}

const cutOf = (plain: string, small: string): Cut => {
  const whole = { at: 0, text: small };
  if (!anyThence.test(small) || isListed(small)) {
    return { as: 'list', spans: cut(whole, indexesOf(small, /\n|(?<=;)/g)) };
  }
  const before = places.flatMap((form) => indexesOf(small, form));
  const spans = cut(whole, [...before, ...indexesOf(plain, sentences)]);
  return { as: 'deed', spans: spans.flatMap(linesApart) };
};

const beginsOf = ({ at, text }: Span, small: string, cutAs: Cut['as']): Clause['begins'] => {
  if (starts.test(text)) return 'start';
  const line = cutAs === 'list' ? at === 0 || small[at] === '\n' : callLine.test(text);
  return line || called.test(text) ? 'call' : 'goes on';
};

const signsBefore = /^[\s;:,.]+/;

/** A text without the blanks and stops at its end; a form that ends with `$` looks at a row of blanks again from each. */
const withoutEnd = (text: string): string => {
  let end = text.length;
  while (end > 0 && /[\s;:,]/.test(text[end - 1] ?? '')) end -= 1;
  return text.slice(0, end);
};

/**
 * Cuts a text of calls into what stands for itself: a list line by line, a deed before every `thence`,
 * at its semicolons and sentences, and where its point of beginning and its area are told. Nothing but
 * blanks and stops is left out.
 */
export const clauses = (text: string): readonly Clause[] => {
  const plain = plainDeed(text);
  const small = smallLetters(plain);
  let [line, counted] = [1, 0];
  const { as, spans } = cutOf(plain, small);
  return spans.flatMap((span) => {
    const piece = plain.slice(span.at, span.at + span.text.length);
    const words = withoutEnd(piece.replace(signsBefore, ''));
    if (words === '') return [];
    const first = span.at + span.text.search(/[^\s;:,.]/);
    line += plain.slice(counted, first).split('\n').length - 1;
    counted = first;
    const begins = beginsOf(span, small, as);
    return [{ line, text: words.replace(/\s+/g, ' '), begins }];
  });
};
