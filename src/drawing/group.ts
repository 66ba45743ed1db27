import type { Primitive } from './primitive.ts';

/** Primitives of one thing or a few that are drawn anew together: the very same list while none of them is another. */
export type Group = readonly Primitive[];

/** Groups that follow one another: of a fence line the very same list while each of them is. */
export type Bundle = readonly Group[];
