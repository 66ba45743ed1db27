import { leavesFor } from '../engine/gate/leavesFor.ts';
import { slack } from '../geometry/tolerance.ts';
import { formatLength } from '../units/formatLength.ts';
import { inches, sum, type Inches } from '../units/inches.ts';
import type { LengthRange } from '../units/parseRange.ts';
import { read, unread, type Parsed } from '../units/parsed.ts';
import { quotedText } from '../units/quotedText.ts';
import { valueOf, valuesOf, type Call } from './call.ts';
import { inchStyle } from './inchStyle.ts';
import { readLengths } from './readLengths.ts';
import { readRange } from './readRange.ts';
import { phrase } from '../phrases/phrase.ts';

/** What a hinge takes up, inches; one that can be adjusted is planned in its middle. */
export interface HingeTake extends LengthRange {
  readonly planned: Inches;
  readonly spread: 'uncertain' | 'adjustable';
}

/** What stands between two gate posts, as the command line was given it. Lengths in inches. */
export interface Stack {
  readonly leaves: readonly Inches[];
  /** One for each leaf. */
  readonly hinges: readonly HingeTake[];
  /** The gaps at which the latch catches, and the one to plan for. */
  readonly reach: LengthRange;
  readonly gap: Inches;
  /** An opening as it was set. */
  readonly set: Inches | null;
  /** What the leaves were worked out from; null where they were given. */
  readonly order: { readonly want: Inches; readonly leaves: number; readonly step: Inches } | null;
}

const middleOf = ({ low, high }: LengthRange): Inches => inches((low + high) / 2);

/** One optional length; null where it was not given. */
const optional = (call: Call, name: string): Parsed<Inches | null> => {
  const lengths = readLengths(name, valuesOf(call, name));
  return lengths.ok ? read(lengths.value[0] ?? null) : lengths;
};

/** Too narrow cannot be mended: what is not sure is planned at its largest. */
const plannedAt = { uncertain: ({ high }: LengthRange) => high, adjustable: middleOf } as const;

const hingeOptions = [
  { name: 'hinge', spread: 'uncertain' },
  { name: 'adjustable-hinge', spread: 'adjustable' },
] as const;

/** Hinges that are what they are first, then those that can be adjusted. */
const hingesOf = (call: Call): Parsed<readonly HingeTake[]> => {
  const hinges: HingeTake[] = [];
  for (const { name, spread } of hingeOptions) {
    for (const text of valuesOf(call, name)) {
      const hinge = readRange(name, text);
      if (!hinge.ok) return hinge;
      hinges.push({ ...hinge.value, planned: plannedAt[spread](hinge.value), spread });
    }
  }
  if (hinges.length > 0) return read(hinges);
  return unread(
    '--hinge is missing: expected --hinge LOW..HIGH, or --adjustable-hinge LOW..HIGH for one that can be adjusted',
  );
};

const gapOf = (call: Call, { low, high }: LengthRange): Parsed<Inches> => {
  const text = valueOf(call, 'plan-gap');
  if (text === null) return read(middleOf({ low, high }));
  const gap = readRange('plan-gap', text);
  if (!gap.ok) return gap;
  const { low: planned } = gap.value;
  if (planned !== gap.value.high)
    return unread(phrase`--plan-gap: ${quotedText(text)} is a range: expected one length`);
  if (planned >= low && planned <= high) return read(planned);
  return unread(
    phrase`--plan-gap: ${quotedText(text)} is outside the catch range ${quotedText(valueOf(call, 'catch') ?? '')}: expected a gap at which the latch catches`,
  );
};

const countOf = (call: Call): Parsed<1 | 2> => {
  const text = valueOf(call, 'leaves');
  if (text === '1') return read(1);
  if (text === '2') return read(2);
  if (text === null)
    return unread(phrase`--leaves is missing: expected --leaves 1 or 2 beside --want`);
  return unread(phrase`--leaves: ${quotedText(text)}: expected 1 or 2`);
};

type Taken = Pick<Stack, 'hinges' | 'reach' | 'gap'>;

const orderOf = (call: Call, { hinges, gap }: Taken): Parsed<Pick<Stack, 'leaves' | 'order'>> => {
  const want = optional(call, 'want');
  if (!want.ok) return want;
  const step = optional(call, 'step');
  if (!step.ok) return step;
  const count = countOf(call);
  if (!count.ok) return count;
  if (want.value === null || step.value === null) {
    return unread(phrase`--step is missing: expected --step S beside --want, such as --step 1/8`);
  }
  if (hinges.length !== count.value) return wrongHinges(count.value, hinges.length);
  const taken = inches(sum(hinges.map(({ planned }) => planned)) + gap);
  const least = inches(taken + step.value * count.value);
  if (want.value < least - slack) {
    const [took, needed] = [formatLength(taken, inchStyle), formatLength(least, inchStyle)];
    return unread(
      phrase`--want: ${quotedText(valueOf(call, 'want') ?? '')} leaves no room for a leaf: hinges and latch take ${took}, expected at least ${needed}`,
    );
  }
  const { leaf } = leavesFor(want.value, taken, count.value, step.value);
  return read({
    leaves: Array.from({ length: count.value }, () => leaf),
    order: { want: want.value, leaves: count.value, step: step.value },
  });
};

const wrongHinges = (leaves: number, hinges: number): Parsed<never> =>
  unread(phrase`--hinge: expected one for each leaf (${leaves}), found ${hinges}`);

const givenLeaves = (call: Call, { hinges }: Taken): Parsed<Pick<Stack, 'leaves' | 'order'>> => {
  const stray = ['leaves', 'step'].find((name) => call.values.has(name));
  if (stray !== undefined) return unread(phrase`--${stray} goes with --want: expected --want O`);
  const leaves = readLengths('leaf', valuesOf(call, 'leaf'));
  if (!leaves.ok) return leaves;
  const { length } = leaves.value;
  if (length === 0)
    return unread(phrase`--leaf is missing: expected --leaf L, or --want O to find it`);
  if (length > 2) return unread(phrase`--leaf: expected one leaf or two, found ${length}`);
  if (hinges.length !== length) return wrongHinges(length, hinges.length);
  return read({ leaves: leaves.value, order: null });
};

/**
 * Reads leaves, hinges and latch of an opening; with `--want`, the leaves are worked out instead.
 * One line says which option is missing, does not fit the others or cannot be read.
 */
export const readStack = (call: Call): Parsed<Stack> => {
  if (call.values.has('want') && call.values.has('leaf')) {
    return unread(phrase`--leaf and --want: expected one of them: --want works the leaves out`);
  }
  const hinges = hingesOf(call);
  if (!hinges.ok) return hinges;
  const reach = readRange('catch', valueOf(call, 'catch') ?? '');
  if (!reach.ok) return reach;
  const gap = gapOf(call, reach.value);
  if (!gap.ok) return gap;
  const set = optional(call, 'set');
  if (!set.ok) return set;
  const taken = { hinges: hinges.value, reach: reach.value, gap: gap.value };
  const leaves = call.values.has('want') ? orderOf(call, taken) : givenLeaves(call, taken);
  return leaves.ok ? read({ ...taken, ...leaves.value, set: set.value }) : leaves;
};
