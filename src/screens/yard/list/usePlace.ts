import { useState } from 'react';
import { edgesOf, type Edge } from '../../../editor/edges.ts';
import type { ToldPlace } from '../../../editor/list/toldPlace.ts';
import { phrase } from '../../../phrases/phrase.ts';
import type { Anchor } from '../../../site/anchor.ts';
import type { MarkId } from '../../../site/ids.ts';
import type { Site } from '../../../site/site.ts';
import { parseLength } from '../../../units/parseLength.ts';
import { parseWay } from '../../../units/parseWay.ts';
import { read, unread, type Parsed } from '../../../units/parsed.ts';
import { inches, type Inches } from '../../../units/inches.ts';
import { useSite } from '../../bench.ts';

/** The fields that say a place: which are shown goes by `by`. */
export interface PlaceText {
  readonly by: ToldPlace['by'];
  readonly mark: MarkId | null;
  readonly far: string;
  readonly way: string;
  /** By its number among those that are offered. */
  readonly edge: number;
  readonly from: Anchor['from'];
  readonly east: string;
  readonly north: string;
}

const nothing: PlaceText = {
  by: 'mark',
  mark: null,
  far: '',
  way: '',
  edge: 0,
  from: 'start',
  east: '',
  north: '',
};

const lengthOf = (name: string, text: string, { lengths }: Site): Parsed<Inches> => {
  const minus = text.startsWith('-') || text.startsWith('−');
  const found = parseLength(minus ? text.slice(1) : text, lengths.system);
  if (!found.ok) return unread(phrase`${name}: ${found.reason}`);
  return read(minus ? inches(-found.value + 0) : found.value);
};

/** What the fields say of a place; one line for the first that cannot be read. */
const readPlace = (
  site: Site,
  edges: readonly Edge[],
  { by, mark, far, way, edge, from, east, north }: PlaceText,
): Parsed<ToldPlace> => {
  const [firstMark] = Object.keys(site.marks) as MarkId[];
  const chosen = mark !== null && mark in site.marks ? mark : firstMark;
  if (by === 'figures') {
    const x = lengthOf(phrase`East`, east, site);
    if (!x.ok) return x;
    const y = lengthOf(phrase`North`, north, site);
    return y.ok ? read({ by, x: x.value, y: y.value }) : y;
  }
  if (by === 'edge') {
    const on = edges[edge] ?? edges[0];
    if (on === undefined) return unread(phrase`Leg or side: expected one that is drawn`);
    const offset = lengthOf(phrase`How far`, far === '' && from === 'middle' ? '0' : far, site);
    return offset.ok ? read({ by, edge: on, anchor: { from, offset: offset.value } }) : offset;
  }
  if (chosen === undefined) return unread(phrase`Mark: expected one that is drawn`);
  if (by === 'mark') return read({ by, mark: chosen });
  const length = lengthOf(phrase`How far`, far, site);
  if (!length.ok) return length;
  const bearing = parseWay(way);
  if (!bearing.ok) return unread(phrase`Direction: ${bearing.reason}`);
  return read({ by, mark: chosen, far: length.value, bearing: bearing.value });
};

/** Holds what is said of a place among the legs and sides that are asked for. */
export const usePlace = (isAsked: (edge: Edge) => boolean) => {
  const site = useSite();
  const [text, setText] = useState<PlaceText>(nothing);
  const edges = edgesOf(site).filter(isAsked);
  const bare = Object.keys(site.marks).length === 0;
  // on bare ground there is no mark to begin from
  const by = bare && text.by !== 'figures' ? 'figures' : text.by;
  const shown: PlaceText = bare
    ? { ...text, by, east: text.east || '0', north: text.north || '0' }
    : text;
  return {
    text: shown,
    edges,
    bare,
    say: (change: Partial<PlaceText>) => setText((was) => ({ ...was, ...change })),
    /** What the fields say; those of one way of saying a place where only that is asked. */
    read: (only = shown.by) => readPlace(site, edges, { ...shown, by: only }),
  };
};

export type Place = ReturnType<typeof usePlace>;
