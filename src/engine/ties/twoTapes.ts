import { isMetric } from '../../units/isMetric.ts';
import { cross } from '../../geometry/cross.ts';
import { distance } from '../../geometry/distance.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { subtract } from '../../geometry/subtract.ts';
import type { Trusts } from '../../site/trusts.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { roundLength } from '../../units/roundLength.ts';
import type { Reference } from './reference.ts';

/** One tape: where it is hooked, and what it reads at the middle of the post, held level. */
export interface TieTape {
  readonly from: Reference;
  /** As the sheet prints it, rounded by itself. */
  readonly reads: Inches;
  /** Longer than the tape that a crew carries. */
  readonly over: boolean;
}

/** Where two tapes cross is the middle of the post; lengths in inches. */
export interface TwoTapes {
  readonly first: TieTape;
  readonly second: TieTape;
  /** Of one who stands at the first mark and looks to the second. */
  readonly side: 'left' | 'right';
  /** How far the place shifts when one of the tapes is read wrong by `slip`. */
  readonly slip: Inches;
  readonly shift: Inches;
  /** A third tape, by which the two are checked; null where there is no third mark. */
  readonly check: TieTape | null;
}

/** How lengths are written and how far a tape is trusted on a site. */
export interface TieStyle {
  readonly lengths: LengthStyle;
  readonly trusts: Trusts;
}

/** The tape that a crew carries: 100 ft, or 30 m. Common practice, no published source. */
export const tapeOf = (style: LengthStyle): Inches =>
  inches(isMetric(style.system) ? 30 / 0.0254 : 1200);

/** What a tape may be read wrong by, by which the strength of a tie is told: 1/4 in, or 5 mm. Ours. */
export const slipOf = (style: LengthStyle): Inches =>
  inches(isMetric(style.system) ? 5 / 25.4 : 1 / 4);

/** Tapes that cross flatter than this give no place. Ours, no published source: a slip counts fourfold. */
const flattest = Math.sin((15 * Math.PI) / 180);

/** Nearer than this to the post a mark is in the way of its hole, inches. Ours. */
const nearest = 12;

/**
 * What a mark weighs beside the corner of a building, which anyone finds: edges of paving are less
 * sharp, pins of a boundary have to be looked for, and nobody hooks a tape in the middle of a trunk.
 * Ours.
 */
const weights: Readonly<Record<Reference['of'], number>> = {
  building: 1,
  mark: 1,
  paving: 1.3,
  pool: 1.3,
  boundary: 1.6,
  tree: 1000,
};

/** What no reading holds, and what is beyond the tape, is taken where nothing else is; ours. */
const [forSketched, forOver] = [10, 30] as const;

/** How far a tape may be off, weighed by how well its mark is found. */
const loadOf = (reference: Reference, length: number, { lengths, trusts }: TieStyle): number =>
  (trusts.tapeLeast + trusts.tapeShare * length) *
  weights[reference.of] *
  (reference.sketched ? forSketched : 1) *
  (length > tapeOf(lengths) ? forOver : 1);

interface Pulled {
  readonly from: Reference;
  readonly length: number;
  /** Towards the post, of length 1. */
  readonly way: SitePoint;
  readonly load: number;
}

const pulledTo = (at: SitePoint, references: readonly Reference[], how: TieStyle): Pulled[] =>
  references.flatMap((from) => {
    const length = distance(from.at, at);
    if (length < nearest) return [];
    const off = subtract(at, from.at);
    const way = { x: off.x / length, y: off.y / length };
    return [{ from, length, way, load: loadOf(from, length, how) }];
  });

/** How far off the place may be that two tapes give; without end where they cross too flat. */
const costOf = (a: Pulled, b: Pulled): number => {
  const sine = Math.abs(cross(a.way, b.way));
  return sine < flattest ? Infinity : Math.hypot(a.load, b.load) / sine;
};

const best = <T>(all: readonly T[], cost: (one: T) => number): T | null => {
  const first = all.reduce<{ one: T; cost: number } | null>((so, one) => {
    const own = cost(one);
    return own < (so?.cost ?? Infinity) ? { one, cost: own } : so;
  }, null);
  return first?.one ?? null;
};

/** A third tape: the one that crosses either of the two best; a trunk checks nothing. */
const checkFor = (pulled: readonly Pulled[], [a, b]: readonly [Pulled, Pulled]): Pulled | null =>
  best(
    pulled.filter((one) => one !== a && one !== b && one.from.of !== 'tree'),
    (one) => Math.min(costOf(one, a), costOf(one, b)),
  );

/**
 * The two tapes by which a place is found best from some marks, with a third as a check: of all
 * pairs the one that leaves the least doubt, short tapes that cross near to square. Null where no
 * two of them cross well enough.
 */
export const twoTapes = (
  at: SitePoint,
  references: readonly Reference[],
  how: TieStyle,
): TwoTapes | null => {
  const pulled = pulledTo(at, references, how);
  const pairs = pulled.flatMap((a, n) => pulled.slice(n + 1).map((b) => [a, b] as const));
  const pair = best(pairs, ([a, b]) => costOf(a, b));
  if (pair === null) return null;
  const [a, b] = pair[0].length <= pair[1].length ? pair : ([pair[1], pair[0]] as const);
  const check = checkFor(pulled, [a, b]);
  const tape = ({ from, length }: Pulled): TieTape => ({
    from,
    reads: roundLength(inches(length), how.lengths),
    over: length > tapeOf(how.lengths),
  });
  const base = subtract(b.from.at, a.from.at);
  const slip = slipOf(how.lengths);
  return {
    first: tape(a),
    second: tape(b),
    side: cross(base, subtract(at, a.from.at)) > 0 ? 'left' : 'right',
    slip,
    shift: inches(slip / Math.abs(cross(a.way, b.way))),
    check: check === null ? null : tape(check),
  };
};
