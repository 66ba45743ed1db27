import type { GateId, LineId } from '../../site/ids.ts';
import type { Basis } from '../../trade/countRules.ts';
import type { Inches } from '../../units/inches.ts';
import type { PostId } from '../post.ts';
import type { Sizes } from './sizes.ts';

/** What a thing is part of: what lights up on the pad when its count is touched. */
export interface CountedOn {
  readonly posts: readonly PostId[];
  readonly lines: readonly LineId[];
  readonly gates: readonly GateId[];
}

/** Things alike that rules count: what they are, how many, how long or high each is, and what it measures. */
export interface Counted {
  readonly basis: Basis;
  readonly count: number;
  /** Along it, or up it: inches. */
  readonly length: Inches;
  readonly sizes: Sizes;
  readonly on: CountedOn;
}
