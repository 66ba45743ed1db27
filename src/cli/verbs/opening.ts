import { gapAt, type Gap } from '../../engine/gate/gapAt.ts';
import { openingOf } from '../../engine/gate/openingOf.ts';
import type { Opening, Term } from '../../engine/opening.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { read, type Parsed } from '../../units/parsed.ts';
import type { Call } from '../call.ts';
import { inchStyle } from '../inchStyle.ts';
import { openingLines } from '../openingLines.ts';
import { readStack, type Stack } from '../readStack.ts';
import type { Answer, Verb } from '../verb.ts';

const told = (length: Inches): string => formatLength(length, inchStyle);

/** Typed by hand: of no site, and not sure between its ends. */
const given = { of: null, on: '', spread: 'uncertain', source: 'given' } as const;

const leafTerm = (width: Inches, n: number, source: string): Term => ({
  role: 'leaf',
  label: `Leaf ${n + 1}`,
  low: width,
  planned: width,
  high: width,
  ...given,
  source,
});

/** In the order met between the posts. A hinge is planned at its largest: too narrow cannot be mended. */
const termsOf = ({ leaves, hinges, reach, gap, order }: Stack): readonly Term[] => {
  const source = order === null ? 'given' : `rounded down to ${told(order.step)}`;
  const sides = leaves.map((leaf, n) => {
    const hinge = hinges[n] ?? { low: leaf, high: leaf };
    return [
      {
        role: 'hinge' as const,
        label: `Hinge ${n + 1}`,
        ...hinge,
        planned: hinge.high,
        ...given,
      },
      leafTerm(leaf, n, source),
    ];
  });
  const [first = [], second = []] = sides;
  const caught = { ...given, spread: 'catch' as const };
  const latch = { role: 'latch' as const, label: 'Latch', ...caught, ...reach, planned: gap };
  return [...first, latch, ...second.toReversed()];
};

const verdictLine = (width: Inches, { verdict, planned, by }: Gap): string => {
  const left =
    planned < 0
      ? `hinges and leaves are ${told(inches(-planned))} too wide for it`
      : `leaves ${told(planned)} for the latch`;
  const set = `set at ${told(width)}: ${left}`;
  if (verdict === 'holds') return `${set}, it catches`;
  if (verdict === 'may hold') return `${set}, it may catch: measure the hinges`;
  return `${set}, ${verdict} by ${told(by)}`;
};

const answer = (stack: Stack, opening: Opening): Answer => {
  const { order, set } = stack;
  const gap = set === null ? null : gapAt(opening, set);
  const lines = [
    ...(order === null
      ? []
      : [`${order.leaves} × ${told(stack.leaves[0] ?? order.want)} for ${told(order.want)}`]),
    ...openingLines(opening, inchStyle),
    ...(set === null || gap === null ? [] : [verdictLine(set, gap)]),
  ];
  const { target, holdsFrom, holdsTo, terms } = opening;
  const ordered = order === null ? {} : { ...order, leaf: stack.leaves[0] };
  const asSet = gap === null ? {} : { set: { width: set, ...gap } };
  return {
    text: lines.join('\n'),
    json: { target, holdsFrom, holdsTo, ...ordered, ...asSet, terms },
    stopped: gap !== null && (gap.verdict === 'too narrow' || gap.verdict === 'too wide'),
  };
};

const run = (call: Call): Parsed<Answer> => {
  const stack = readStack(call);
  if (!stack.ok) return stack;
  return read(answer(stack.value, openingOf(termsOf(stack.value))));
};

const lengthOption = { needed: false, repeats: false };

/** `opening`: leaves, hinges and latch added up to an opening, or a wanted opening turned round. */
export const opening: Verb = {
  name: 'opening',
  does: 'adds leaves, hinges and latch up to an opening, or turns a wanted opening round',
  places: [],
  options: [
    { ...lengthOption, name: 'leaf', value: 'L', repeats: true, does: 'a leaf, out to out' },
    {
      name: 'hinge',
      value: 'LOW..HIGH',
      needed: true,
      repeats: true,
      does: 'what the hinge of a leaf takes up, one for each leaf',
    },
    {
      name: 'catch',
      value: 'LOW..HIGH',
      needed: true,
      repeats: false,
      does: 'the gaps at which the latch catches',
    },
    { ...lengthOption, name: 'plan-gap', value: 'G', does: 'the gap to plan for; else the middle' },
    { ...lengthOption, name: 'set', value: 'O', does: 'an opening as it was set: will it hang?' },
    { ...lengthOption, name: 'want', value: 'O', does: 'the opening that leaves are wanted for' },
    { ...lengthOption, name: 'leaves', value: 'N', does: 'how many leaves, 1 or 2, with --want' },
    { ...lengthOption, name: 'step', value: 'S', does: "the shop's step, with --want" },
  ],
  run: async (call) => run(call),
};
