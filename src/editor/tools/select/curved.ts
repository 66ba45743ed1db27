import type { Primitive } from '../../../drawing/primitive.ts';
import { add } from '../../../geometry/add.ts';
import { distance } from '../../../geometry/distance.ts';
import { midpoint } from '../../../geometry/midpoint.ts';
import { ordinateThrough } from '../../../geometry/middleOrdinate.ts';
import type { SitePoint } from '../../../geometry/point.ts';
import { subtract } from '../../../geometry/subtract.ts';
import { arcOf, trackAt, trackLength, type Track } from '../../../geometry/track.ts';
import { curveLeg } from '../../../site/edits/curveLeg.ts';
import { curveThrough } from '../../../site/edits/curveThrough.ts';
import { legAt } from '../../../site/legGround.ts';
import { legTrack } from '../../../site/legTrack.ts';
import type { Site } from '../../../site/site.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { inches, type Inches } from '../../../units/inches.ts';
import { handStep } from '../../handStep.ts';
import { marksNear } from '../../near/marksNear.ts';
import type { Pointer } from '../../pointer.ts';
import type { Held } from './selectState.ts';
import { phrase } from '../../../phrases/phrase.ts';

type Hand = NonNullable<Pointer>;
type HeldLeg = Extract<Held, { readonly kind: 'leg' }>;

/** A hand bows a leg by no more of its chord than this; what is typed can be more. */
const mostShare = 1;

const trackOf = (site: Site, { line, id }: HeldLeg): Track<'site'> | null => {
  const fence = site.lines[line];
  return fence === undefined ? null : legTrack(site, fence, legAt(fence, id));
};

/** The middle ordinate that a hand means: straight within half its reach, else in whole steps. */
const settled = (bow: number, chord: number, { reach, free }: Hand, step: number): number => {
  const held = Math.min(mostShare * chord, Math.max(-mostShare * chord, bow));
  if (free) return held;
  if (Math.abs(held) <= reach / 2) return 0;
  // adding 0 turns a negative zero round
  return Math.round(held / step) * step + 0;
};

/** The third mark nearest to a point, within reach, that a leg can be bowed through; null for none. */
const thirdMark = (
  site: Site,
  { start, end }: Track<'site'>,
  at: SitePoint,
  reach: Inches,
): SitePoint | null => {
  const chord = distance(start, end);
  const [nearest] = marksNear(site, { at, reach })
    .map(({ point }) => ({ point, away: distance(point, at) }))
    .filter(
      ({ point, away }) => away <= reach && distance(point, start) > 0 && distance(point, end) > 0,
    )
    .toSorted((a, b) => a.away - b.away);
  if (nearest === undefined) return null;
  const bow = ordinateThrough(start, nearest.point, end);
  return bow !== null && Math.abs(bow) <= mostShare * chord ? nearest.point : null;
};

/** How a knob was taken: where it was, and where the hand came down. */
export interface Grip {
  readonly knob: SitePoint;
  readonly from: SitePoint;
}

/**
 * A site in which a leg is bowed so that it passes its knob, which goes by as much as the hand: to a
 * middle ordinate in whole steps, through a third mark within reach, straight near its chord, and as
 * it comes where snapping is off.
 */
export const curved = (site: Site, what: HeldLeg, { knob, from }: Grip, hand: Hand): Site => {
  const track = trackOf(site, what);
  const chord = track === null ? 0 : distance(track.start, track.end);
  if (track === null || chord === 0) return site;
  const at = add(knob, subtract(hand.at, from));
  const third = hand.free ? null : thirdMark(site, track, at, hand.reach);
  if (third !== null) return curveThrough(site, what.line, what.id, third);
  const bow = ordinateThrough(track.start, at, track.end) ?? 0;
  const step = handStep[site.lengths.system];
  return curveLeg(site, { line: what.line, leg: what.id, bow: settled(bow, chord, hand, step) });
};

/** The chord and the middle ordinate of a leg, as guides; none for a straight one. */
export const chordGuides = (site: Site, what: HeldLeg): Primitive[] => {
  const track = trackOf(site, what);
  if (track === null || track.bow === 0) return [];
  const { start, end } = track;
  const middle = trackAt(track, trackLength(track) / 2);
  return [
    [start, end],
    [midpoint(start, end), middle],
  ].map((points): Primitive => ({ kind: 'polyline', points, closed: false, pen: 'guide' }));
};

/** How a leg runs, as one says it while it is bowed. */
export const curveText = (site: Site, what: HeldLeg): string => {
  const track = trackOf(site, what);
  const arc = track === null ? null : arcOf(track);
  if (track === null || arc === null) return phrase`Straight`;
  const write = (length: number): string => formatLength(inches(length), site.lengths);
  return phrase`Middle ordinate ${write(Math.abs(track.bow))}, radius ${write(arc.radius)}`;
};
