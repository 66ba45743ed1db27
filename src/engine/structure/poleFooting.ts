import { inches, type Inches } from '../../units/inches.ts';

/** A push on a pole: pounds, and how high over the ground, inches. */
export interface PolePush {
  readonly pounds: number;
  readonly height: Inches;
}

/** What a pole stands in. */
export interface PoleGround {
  /** Diameter of a round footing, or the diagonal of a square one; inches. */
  readonly width: Inches;
  /** Lateral bearing for each foot of depth, pounds per square foot, with every increase that is allowed. */
  readonly lateral: number;
}

/** One depth that was tried: the pressure that counts, psf, the term A, and the depth that it asks for. */
export interface PoleTrial {
  readonly depth: Inches;
  readonly pressure: number;
  /** The term A of the formula, feet. */
  readonly term: number;
  readonly asks: Inches;
}

/** A depth with how it was found. */
export interface PoleDepth {
  /** Null where no depth was found: the last trial says how far off it was. */
  readonly depth: Inches | null;
  readonly trials: readonly PoleTrial[];
}

/** Lateral bearing rises no more below so many feet: IBC 1807.3.2.1 and 1807.3.2.2. */
const risesTo = 12;
/** Deeper than 40 ft nobody digs for a fence, inches; ours. */
export const deepest = inches(480);
const mostTrials = 60;
/** Trials that agree to a 64th of an inch are at an end, feet. */
const near = 1 / 64 / 12;

const checked = ({ pounds, height }: PolePush, { width, lateral }: PoleGround): void => {
  if (!(pounds >= 0 && height >= 0)) {
    throw new RangeError(`push of ${pounds} lb at ${height} in: expected 0 or more`);
  }
  if (!(width > 0 && lateral > 0)) {
    throw new RangeError(`footing of ${width} in, ${lateral} psf per ft: expected above 0`);
  }
};

/**
 * What a depth in inches asks for, of a pole that nothing holds at the ground: d = A/2 (1 + √(1 + 4.36 h/A))
 * with A = 2.34 P ÷ (S₁ b), S₁ at a third of the depth, feet and pounds (IBC 1807.3.2.1).
 */
export const nonconstrainedTrial = (
  push: PolePush,
  ground: PoleGround,
  depth: Inches,
): PoleTrial => {
  checked(push, ground);
  const pressure = ground.lateral * Math.min(depth / 12 / 3, risesTo);
  const term = (2.34 * push.pounds) / (pressure * (ground.width / 12));
  const root = term === 0 ? 0 : Math.sqrt(1 + (4.36 * (push.height / 12)) / term);
  return { depth, pressure, term, asks: inches(12 * 0.5 * term * (1 + root)) };
};

/**
 * The depth of a pole that nothing holds at the ground, inches, by trials: each next one lies half way to
 * what the one before it asks for. Null where even 40 ft asks for more, or where the trials do
 * not come to an end by 60.
 */
export const nonconstrainedDepth = (push: PolePush, ground: PoleGround): PoleDepth => {
  checked(push, ground);
  if (push.pounds === 0) return { depth: inches(0), trials: [] };
  const trials: PoleTrial[] = [];
  let depth = inches(24);
  while (trials.length < mostTrials) {
    const trial = nonconstrainedTrial(push, ground, depth);
    trials.push(trial);
    if (Math.abs(trial.asks - depth) <= near * 12) return { depth: trial.asks, trials };
    if (depth === deepest && trial.asks > deepest) return { depth: null, trials };
    depth = inches(Math.min(deepest, (depth + trial.asks) / 2));
  }
  return { depth: null, trials };
};

/**
 * The depth of a pole that a rigid floor or paving holds at the ground, inches: d² = 4.25 M ÷ (S₃ b), S₃ at
 * the depth itself, feet and pounds (IBC 1807.3.2.2).
 */
export const constrainedDepth = (push: PolePush, ground: PoleGround): Inches => {
  checked(push, ground);
  const moment = push.pounds * (push.height / 12);
  const each = (4.25 * moment) / (ground.lateral * (ground.width / 12));
  const depth = Math.cbrt(each);
  return inches(12 * (depth <= risesTo ? depth : Math.sqrt(each / risesTo)));
};
