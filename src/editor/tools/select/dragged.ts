import { add } from '../../../geometry/add.ts';
import { distance } from '../../../geometry/distance.ts';
import { subtract } from '../../../geometry/subtract.ts';
import { unitVector } from '../../../geometry/unitVector.ts';
import type { SitePoint } from '../../../geometry/point.ts';
import { anchoredAt } from '../../../site/anchor.ts';
import { entry } from '../../../site/entry.ts';
import { moveGate } from '../../../site/edits/moveGate.ts';
import { moveMark } from '../../../site/edits/moveMark.ts';
import type { GateId, MarkId } from '../../../site/ids.ts';
import { legAt } from '../../../site/legGround.ts';
import { legTrack } from '../../../site/legTrack.ts';
import type { Site } from '../../../site/site.ts';
import { inches } from '../../../units/inches.ts';
import type { Aim } from '../../aim.ts';
import type { Edge } from '../../edges.ts';
import { anchorFrom } from '../../gateAnchor.ts';
import { gateSpan } from '../../gateSpan.ts';
import { legNear } from '../../legNear.ts';
import type { Pointer } from '../../pointer.ts';
import { edgesNear } from '../../near/edgesNear.ts';
import { movedTogether } from '../../movedTogether.ts';
import { snap } from '../../snap.ts';
import type { Snap } from '../../snap.ts';
import type { SnapLine } from '../../snapLine.ts';
import { untyped } from '../../typed.ts';
import { movedBy, type Ground, type Loose } from './movedBy.ts';
import type { Held } from './selectState.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { theThing } from '../../theThing.ts';

type Hand = NonNullable<Pointer>;

/** The legs and sides that pass a mark, those that end in it among them. */
const edgesAt = (site: Site, id: MarkId): Edge[] => {
  const at = site.marks[id];
  return at === undefined ? [] : edgesNear(site, { at, reach: inches(0) });
};

/** The lines on which a mark slides along the legs and sides that meet in it. */
const slides = (site: Site, id: MarkId): SnapLine[] =>
  edgesAt(site, id).flatMap(({ start, end, marks, of }): SnapLine[] => {
    const far = marks[0] === id ? end : marks[1] === id ? start : null;
    const way = far === null ? null : unitVector(start, end);
    if (far === null || way === null) return [];
    const label =
      of.kind === 'leg' ? phrase`along the fence` : phrase`along the ${theThing[of.as]}`;
    return [{ kind: 'extension', origin: { x: far.x, y: far.y }, way, label }];
  });

/** Where a mark that is being dragged goes. */
export const markSnap = (site: Site, id: MarkId, hand: Hand): Snap => {
  const aim: Aim = {
    ...hand,
    from: null,
    last: null,
    typed: untyped,
    except: [id],
    also: slides(site, id),
  };
  return snap(site, aim);
};

/** The mark that a mark being dragged lies on, so that letting go makes one of the two; null for none. */
export const joinsOnto = (site: Site, what: Held, hand: Hand): MarkId | null => {
  if (what.kind !== 'mark') return null;
  const { on } = markSnap(site, what.id, hand);
  return on?.kind === 'mark' && on.id !== what.id ? on.id : null;
};

/** The middle of a gate's opening on the ground, as its anchor and the engine's opening hold it. */
const gateMiddle = (site: Site, id: GateId): SitePoint | null => {
  const gate = site.gates[id];
  const line = gate && site.lines[gate.line];
  if (gate === undefined || line === undefined) return null;
  const ground = legTrack(site, line, legAt(line, gate.leg));
  const { from, offset } = gate.anchor;
  const half = from === 'middle' ? 0 : gateSpan(site, gate) / 2;
  return anchoredAt({ from, offset: inches(offset + half) }, ground);
};

const gateAlong = (site: Site, id: GateId, from: SitePoint, hand: Hand): Site => {
  const gate = site.gates[id];
  const middle = gateMiddle(site, id);
  if (gate === undefined || middle === null) return site;
  // the gate goes by as much as the hand: it does not jump to where it was taken
  const place = legNear(site, add(middle, subtract(hand.at, from)), gate.line);
  if (place === null) return site;
  const anchor = anchorFrom(gate.anchor.from, {
    length: place.length,
    station: place.station,
    span: gateSpan(site, gate),
    reach: hand.free ? inches(0) : inches(hand.reach / 2),
    system: site.lengths.system,
  });
  return moveGate(site, id, anchor, { leg: place.leg });
};

/**
 * A site in which a thing follows the hand from where it was taken (`from`): a mark snaps as when
 * it was drawn, a gate runs along its line, measured from the end that it was measured from, all
 * else moves by as much as the hand.
 */
export const dragged = (ground: Ground, what: Loose, from: SitePoint, hand: Hand): Site => {
  const { site } = ground;
  if (what.kind === 'mark') {
    const to = markSnap(site, what.id, hand).point;
    const alone = movedTogether(ground.layout.survey, [what.id]).length === 1;
    return alone
      ? moveMark(site, what.id, to)
      : movedBy(ground, what, subtract(to, entry(site, 'marks', what.id)));
  }
  if (what.kind === 'gate') return gateAlong(site, what.id, from, hand);
  return movedBy(ground, what, subtract(hand.at, from), hand.free ? 0 : hand.reach);
};

/** Whether the hand has gone so far from where it came down that it means to drag. */
export const isDrag = (from: SitePoint, { at, reach }: Hand): boolean =>
  distance(from, at) > reach / 2;
