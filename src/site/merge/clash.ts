import type { PartKind } from './part.ts';

/** How two copies disagree about a part of the document. */
export type ClashKind =
  /** Both gave the same field another value. */
  | 'changed apart'
  /** One took out what the other changed or built on. */
  | 'taken out'
  /** Both put what both have in another order. */
  | 'ordered apart'
  /** Together they make no document. */
  | 'not together';

/** A disagreement of two copies, each called as the merge has them. Undefined: the copy has none. */
export interface Clash {
  /** The same however the copies are called. */
  readonly id: string;
  readonly is: ClashKind;
  readonly key: string;
  readonly kind: PartKind;
  /** Of a changed part its field; `whole` and `order` for the other kinds. */
  readonly field: string;
  readonly base: unknown;
  readonly first: unknown;
  readonly second: unknown;
}

/** Whose value is taken where both copies disagree. */
export type Pick = (id: string) => 'first' | 'second';

/** The id of a disagreement about a field of a part. */
export const clashIdOf = (key: string, field: string): string => `${key} ${field}`;
