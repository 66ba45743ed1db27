import type { LengthStyle } from '../../units/lengthStyle.ts';
import { smallLetters } from '../../units/plainDeed.ts';
import { quotedText } from '../../units/quotedText.ts';
import type { CurveTold } from './call.ts';
import type { Clause } from './clauses.ts';
import { courseFrom, type Before, type Drawn } from './courseFrom.ts';
import { destination, nameOf, type Destination } from './destination.ts';
import { figuresIn } from './figuresIn.ts';
import { readCall } from './readCall.ts';
import { statedArea } from './statedArea.ts';
import { thence } from './thence.ts';
import { phrase } from '../../phrases/phrase.ts';

/** What one clause is, after the clauses before it. */
export type Heard =
  | {
      readonly kind: 'start';
      readonly word: 'beginning' | 'commencing';
      readonly at: string;
      readonly doubts: readonly string[];
    }
  | {
      readonly kind: 'course';
      readonly course: Drawn['course'];
      readonly end: Destination;
      /** What its end says of the curve that begins there. */
      readonly next: CurveTold | null;
      readonly doubts: readonly string[];
    }
  | { readonly kind: 'area'; readonly area: number }
  | { readonly kind: 'fault'; readonly reason: string }
  | { readonly kind: 'words'; readonly reason: string };

/** How bare distances are read and lengths written. */
export interface Hearing {
  /** Inches of a distance without a unit. */
  readonly bare: number;
  readonly style: LengthStyle;
}

const start =
  /^[^a-z]*(beginning|commencing|beg\.?|com\.?) (?:for the same )?(?:at|on|in|from|for) (?:an? |the )?([^;,.(]*)/i;
const called = new RegExp(`^[^a-z]*${thence}`);
const nothing = phrase`no bearing and no distance: nothing in it to draw`;

/** Words of a call that change what its figures mean, and what was made of them. */
const meanings: readonly (readonly [RegExp, string])[] = [
  [
    /±|\+\/-|(?<![a-z])more or less(?![a-z])/,
    phrase`tells its figures roughly: drawn as they stand`,
  ],
  [/\d ?(?:varas?|vrs?)(?![a-z])/, phrase`tells varas: read as those of Texas, 33 1/3 in each`],
];

const meaningLines = (text: string): readonly string[] =>
  meanings.flatMap(([form, line]) => (form.test(smallLetters(text)) ? [line] : []));

/** Figures that are told one by one. */
const mostUnused = 4;

const unusedLines = (unused: readonly string[]): readonly string[] => {
  if (unused.length === 0) return [];
  const some = unused.slice(0, mostUnused).map(quotedText).join(', ');
  const more = unused.length - mostUnused;
  return [
    more <= 0
      ? phrase`also tells ${some}: not drawn`
      : phrase`also tells ${some} and ${more} more: not drawn`,
  ];
};

const startOf = (text: string): Heard | null => {
  const [, word, at = ''] = start.exec(text) ?? [];
  if (word === undefined) return null;
  const small = smallLetters(text);
  const told = figuresIn(small).filter(({ kind }) => kind !== 'number');
  return {
    kind: 'start',
    word: word.toLowerCase().startsWith('c') ? 'commencing' : 'beginning',
    at: nameOf(at),
    doubts: unusedLines(told.map((one) => small.slice(one.at, one.end))),
  };
};

/** Whether a clause would be a course: it begins as one, or has a bearing. */
const isCall = ({ begins, text }: Clause): boolean =>
  begins === 'call' || figuresIn(smallLetters(text)).some(({ kind }) => kind === 'bearing');

const missed = (clause: Clause, reason: string | null): Heard => {
  const small = smallLetters(clause.text);
  if (reason !== null)
    return isCall(clause) ? { kind: 'fault', reason } : { kind: 'words', reason };
  const side = called.test(small) && !small.includes('following');
  return side
    ? { kind: 'fault', reason: phrase`has neither bearing nor distance: this side is missing` }
    : { kind: 'words', reason: nothing };
};

/** What a clause is, where what the clauses before it say is known. */
export const heard = (clause: Clause, before: Before, { bare, style }: Hearing): Heard => {
  const { text } = clause;
  const began = startOf(text);
  if (began !== null) return began;
  const area = statedArea(smallLetters(text));
  const call = readCall(text, bare);
  if (area !== null && (!call.ok || call.value === null)) return { kind: 'area', area };
  if (!call.ok || call.value === null) return missed(clause, call.ok ? null : call.reason);
  const drawn = courseFrom(call.value, before, style);
  if (!drawn.ok) return missed(clause, drawn.reason);
  const { doubts, unused, end } = call.value;
  return {
    kind: 'course',
    course: drawn.value.course,
    end: destination(text.slice(end)),
    next: call.value.kind === 'straight' ? call.value.next : null,
    doubts: [...drawn.value.doubts, ...doubts, ...meaningLines(text), ...unusedLines(unused)],
  };
};
