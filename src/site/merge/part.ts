import type { MapName } from '../limits.ts';

/** What a document says once, each with fields of its own. */
export const singleKinds = [
  'job',
  'lengths',
  'shop',
  'counting',
  'work',
  'levels',
  'trusts',
  'conditions',
  'origin',
] as const;

export type SingleKind = (typeof singleKinds)[number];

/**
 * What a part of a document is: an entry of a map, a corner of a line or feature, a leaf of a gate, a line of
 * the level notes, or what the document says once.
 */
export type PartKind = MapName | SingleKind | 'corners' | 'leaves' | 'notes';

/**
 * What two people can change apart, each by its name. Values that mean something together only (a place, what
 * a part takes up) are one field.
 */
export type Fields = Readonly<Record<string, unknown>>;

/** One part of a document, taken out of it. */
export interface Part {
  readonly kind: PartKind;
  /** The key of the line, feature or gate that it is part of; empty where it stands by itself. */
  readonly owner: string;
  /** Empty for what a document says once. */
  readonly id: string;
  readonly fields: Fields;
}

/** The parts of a document by their keys. */
export type Parts = ReadonlyMap<string, Part>;

/** What a part is filed under: unique in a document. */
export const keyOf = ({ kind, owner, id }: Pick<Part, 'kind' | 'owner' | 'id'>): string =>
  [kind, owner, id].filter((word) => word !== '').join(' ');
