import type { Inches } from '../units/inches.ts';
import type { GateId, LineId } from '../site/ids.ts';
import type { PostId } from './post.ts';

/** One line of the load list: how many of what, the rule that counted it and what it counted. */
export interface LoadLine {
  readonly item: string;
  readonly count: number;
  /** `length` is in inches and is written in the site's own style. */
  readonly unit: 'each' | 'length' | 'cubic feet';
  /** The length of each piece, where it has one. */
  readonly each: Inches | null;
  readonly rule: string;
  readonly source: string;
  readonly of: {
    readonly posts: readonly PostId[];
    readonly lines: readonly LineId[];
    readonly gates: readonly GateId[];
  };
}
