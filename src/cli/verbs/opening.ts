import { gapAt, type Gap } from '../../engine/gate/gapAt.ts';
import { openingOf } from '../../engine/gate/openingOf.ts';
import type { Term } from '../../engine/opening.ts';
import { slack } from '../../geometry/tolerance.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { read, type Parsed } from '../../units/parsed.ts';
import type { Call } from '../call.ts';
import { openingLines } from '../openingLines.ts';
import { rangeLines } from '../rangeLines.ts';
import { readStack, type Stack } from '../readStack.ts';
import { styleOf } from '../styleOf.ts';
import type { Answer, Verb } from '../verb.ts';
import { offBy } from '../verdictWords.ts';
import { phrase } from '../../phrases/phrase.ts';

type Write = (length: number) => string;

/** Typed by hand: of no site. */
const given = { of: null, on: '', source: phrase`given` } as const;

const leafTerm = (width: Inches, n: number, source: string): Term => ({
  role: 'leaf',
  label: phrase`Leaf ${n + 1}`,
  low: width,
  planned: width,
  high: width,
  spread: 'uncertain',
  ...given,
  source,
});

/** In the order met between the posts. */
const termsOf = ({ leaves, hinges, reach, gap, order }: Stack, told: Write): readonly Term[] => {
  const source = order === null ? phrase`given` : phrase`rounded down to ${told(order.step)}`;
  const sides = leaves.map((leaf, n) => {
    const hinge = hinges[n];
    const own = leafTerm(leaf, n, source);
    if (hinge === undefined) return [own];
    return [{ role: 'hinge' as const, label: phrase`Hinge ${n + 1}`, ...given, ...hinge }, own];
  });
  const [first = [], second = []] = sides;
  const caught = { ...given, ...reach, planned: gap, spread: 'catch' as const };
  return [...first, { role: 'latch', label: phrase`Latch`, ...caught }, ...second.toReversed()];
};

const verdictLine = (width: Inches, gap: Gap, { reach }: Stack, told: Write): string => {
  const { verdict, planned, by, least, most } = gap;
  const left =
    planned < 0
      ? phrase`hinges and leaves are ${told(-planned)} too wide for it`
      : phrase`leaves ${told(planned)} for the latch`;
  const set = phrase`set at ${told(width)}: ${left}`;
  const asPlanned = least >= reach.low - slack && most <= reach.high + slack;
  if (verdict === 'holds')
    return asPlanned
      ? phrase`${set}, it catches`
      : phrase`${set}, it catches with the hinges adjusted`;
  if (verdict === 'may hold')
    return phrase`${set}, from ${told(least)} to ${told(most)}, it may catch: measure the hinges`;
  return phrase`${set}, ${offBy(verdict, told(by))}`;
};

/** Which latch would catch for sure, where this one is not sure to. */
const latchLines = ({ verdict, sureWith: { low, high } }: Gap, told: Write): string[] =>
  verdict === 'holds' || low < 0 || low > high
    ? []
    : [phrase`a latch that catches from ${told(low)} to ${told(high)} catches there for sure`];

const answer = (stack: Stack, style: LengthStyle): Answer => {
  const told: Write = (length) => formatLength(inches(length), style);
  const opening = openingOf(termsOf(stack, told));
  const { order, set } = stack;
  const gap = set === null ? null : gapAt(opening, set);
  const lines = [
    ...(order === null
      ? []
      : [phrase`${order.leaves} × ${told(stack.leaves[0] ?? order.want)} for ${told(order.want)}`]),
    ...openingLines(opening, style),
    ...rangeLines(opening, style),
    ...(set === null || gap === null
      ? []
      : [verdictLine(set, gap, stack, told), ...latchLines(gap, told)]),
  ];
  const ordered = order === null ? {} : { ...order, leaf: stack.leaves[0] };
  const asSet = gap === null ? {} : { set: { width: set, ...gap } };
  return {
    text: lines.join('\n'),
    json: { ...opening, ...ordered, ...asSet },
    stopped: gap !== null && (gap.verdict === 'too narrow' || gap.verdict === 'too wide'),
  };
};

const run = (call: Call): Parsed<Answer> => {
  const stack = readStack(call);
  if (!stack.ok) return stack;
  return read(answer(stack.value, styleOf(call, ['leaves'])));
};

const lengthOption = { needed: false, repeats: false };

/** `opening`: leaves, hinges and latch added up to an opening, or a wanted opening turned round. */
export const opening: Verb = {
  name: 'opening',
  does: phrase`adds leaves, hinges and latch up to an opening, or turns a wanted opening round`,
  places: [],
  options: [
    { ...lengthOption, name: 'leaf', value: 'L', repeats: true, does: phrase`a leaf, out to out` },
    {
      name: 'hinge',
      value: 'LOW..HIGH',
      needed: false,
      repeats: true,
      does: phrase`what the hinge of a leaf takes up, somewhere from low to high; one for each leaf`,
    },
    {
      name: 'adjustable-hinge',
      value: 'LOW..HIGH',
      needed: false,
      repeats: true,
      does: phrase`of a hinge that can be set anywhere from low to high; for the leaves after those of --hinge`,
    },
    {
      name: 'catch',
      value: 'LOW..HIGH',
      needed: true,
      repeats: false,
      does: phrase`the gaps at which the latch catches`,
    },
    {
      ...lengthOption,
      name: 'plan-gap',
      value: 'G',
      does: phrase`the gap to plan for; else the middle`,
    },
    {
      ...lengthOption,
      name: 'set',
      value: 'O',
      does: phrase`an opening as it was set: will it hang?`,
    },
    {
      ...lengthOption,
      name: 'want',
      value: 'O',
      does: phrase`the opening that leaves are wanted for`,
    },
    {
      ...lengthOption,
      name: 'leaves',
      value: 'N',
      does: phrase`how many leaves, 1 or 2, with --want`,
    },
    { ...lengthOption, name: 'step', value: 'S', does: phrase`the shop's step, with --want` },
  ],
  run: async (call) => run(call),
};
