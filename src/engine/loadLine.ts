import type { Sold } from './load/sold.ts';
import type { Inches } from '../units/inches.ts';
import type { GateId, LineId } from '../site/ids.ts';
import type { PostId } from './post.ts';

/** What a line of the load list is part of, in the order in which lists print them. */
export const loadParts = ['posts', 'infill', 'rails', 'fittings', 'gates', 'concrete'] as const;
export type LoadPart = (typeof loadParts)[number];

/** One line of the load list: how many of what, the rule that counted it and what it counted. */
export interface LoadLine {
  readonly part: LoadPart;
  /** What it is in price lists: the same on every site, whatever that writes lengths in. */
  readonly code: string;
  readonly item: string;
  readonly count: number;
  /** `length` is in inches and is written in the site's own style. */
  readonly unit: 'each' | 'length' | 'cubic feet';
  /** The length of each piece, where it has one. */
  readonly each: Inches | null;
  /** How it is sold; null where it is bought as it was counted. */
  readonly sold: Sold | null;
  readonly rule: string;
  readonly source: string;
  readonly of: {
    readonly posts: readonly PostId[];
    readonly lines: readonly LineId[];
    readonly gates: readonly GateId[];
  };
}
