import type { Atom } from '../../atom.ts';

/** Something of a sheet that is not broken: its atoms from its own upper left corner, and its height. */
export interface Block {
  readonly height: number;
  readonly atoms: readonly Atom[];
}

/** A row of a stack: `resumed` stands over it where it is the first of those that go on elsewhere. */
export interface Row extends Block {
  readonly resumed?: Block;
}

/**
 * Blocks that follow one another down a column. `head` stands over the first of them and again at
 * the top of every column that they go on in, there as `again`, with what its next row is `resumed` under. `gap` is left before the first.
 */
export interface Stack {
  /** The part of the set that it belongs to: pages are named for the parts on them. */
  readonly part?: string;
  /** What links of other pages call its place. */
  readonly anchor?: string;
  readonly head: Block;
  readonly again: Block;
  readonly rows: readonly Row[];
  readonly gap: number;
}

/** A block that takes no room. */
export const nothing: Block = { height: 0, atoms: [] };
