import { add } from '../../geometry/add.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { scale } from '../../geometry/scale.ts';
import { trackLength } from '../../geometry/track.ts';
import { anchoredAt, type Anchor } from '../../site/anchor.ts';
import type { MarkId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import type { Radians } from '../../units/radians.ts';
import { direction } from '../direction.ts';
import type { Edge } from '../edges.ts';
import { phrase } from '../../phrases/phrase.ts';

/** A place on the ground as one says it, without pointing at it. Lengths in inches. */
export type ToldPlace =
  | { readonly by: 'mark'; readonly mark: MarkId }
  /** So far from a mark, in a direction counter-clockwise from east. */
  | { readonly by: 'way'; readonly mark: MarkId; readonly far: Inches; readonly bearing: Radians }
  /** On a leg or a side, so far along it from one end or off its middle. */
  | { readonly by: 'edge'; readonly edge: Edge; readonly anchor: Anchor }
  /** East and north of the origin. */
  | { readonly by: 'figures'; readonly x: Inches; readonly y: Inches };

const onEdge = ({ lengths }: Site, edge: Edge, anchor: Anchor): Parsed<SitePoint> => {
  const length = trackLength(edge);
  const most = anchor.from === 'middle' ? length / 2 : length;
  if (Math.abs(anchor.offset) <= most && (anchor.from === 'middle' || anchor.offset >= 0)) {
    return read(anchoredAt(anchor, edge));
  }
  const [far, whole] = [formatLength(anchor.offset, lengths), formatLength(inches(most), lengths)];
  return unread(phrase`${far} is off it: expected at most ${whole}`);
};

/** Where a place that was told is on the ground; one line for a mark that is not there and a place off its leg. */
export const toldPlace = (site: Site, told: ToldPlace): Parsed<SitePoint> => {
  if (told.by === 'figures') return read({ x: told.x, y: told.y });
  if (told.by === 'edge') return onEdge(site, told.edge, told.anchor);
  const mark = site.marks[told.mark];
  if (mark === undefined) return unread(phrase`Mark: expected one of this yard`);
  const here: SitePoint = { x: mark.x, y: mark.y };
  return read(told.by === 'mark' ? here : add(here, scale(direction(told.bearing), told.far)));
};
