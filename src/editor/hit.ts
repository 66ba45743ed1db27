import { contains } from '../geometry/contains.ts';
import { distance } from '../geometry/distance.ts';
import { lerp } from '../geometry/lerp.ts';
import { nearestOnSegment } from '../geometry/nearestOnSegment.ts';
import { nearestOnTrack } from '../geometry/track.ts';
import type { SitePoint } from '../geometry/point.ts';
import type { GateLayout, Layout } from '../engine/layout.ts';
import type { PinId } from '../site/ids.ts';
import type { Site } from '../site/site.ts';
import type { Selection } from '../store/selection.ts';
import { inches, type Inches } from '../units/inches.ts';
import { edgesNear } from './near/edgesNear.ts';
import { gatesNear } from './near/gatesNear.ts';
import { groundsNear } from './near/groundsNear.ts';
import { marksNear } from './near/marksNear.ts';
import { pinsNear } from './near/pinsNear.ts';
import { postsNear } from './near/postsNear.ts';
import { shotsNear } from './near/shotsNear.ts';
import { spotsNear } from './near/spotsNear.ts';
import { tapesNear } from './near/tapesNear.ts';

/** Where a hand touches the drawing, in inches on the ground. */
export interface Touch {
  readonly at: SitePoint;
  /** How far from the point a thing still counts as touched. */
  readonly reach: Inches;
}

type Thing = NonNullable<Selection>;

interface Found {
  readonly what: Thing;
  readonly distance: number;
}

/** What is within reach, the nearest first. */
const near = (all: readonly Found[], reach: number): Thing[] =>
  all
    .filter((one) => one.distance <= reach)
    .toSorted((a, b) => a.distance - b.distance)
    .map(({ what }) => what);

/** The gate between its posts, drawn in a little so that the marks at its ends can be taken. */
const gateDistance = ({ start, end }: GateLayout, { at, reach }: Touch): number => {
  const share = Math.min(1 / 3, reach / (distance(start, end) || 1));
  const body = { start: lerp(start, end, share), end: lerp(end, start, share) };
  return nearestOnSegment(at, body).distance;
};

const gates = (layout: Layout, touch: Touch): Found[] =>
  gatesNear(layout.gates, touch).map(([id, gate]) => ({
    what: { kind: 'gate', id },
    distance: gateDistance(gate, touch),
  }));

const marks = (site: Site, touch: Touch): Found[] =>
  marksNear(site, touch).map(({ id, point }) => ({
    what: { kind: 'mark', id },
    distance: distance(touch.at, point),
  }));

/** A post leaves two thirds of its shorter bay to be taken as the leg. */
const shareOfBay = 1 / 3;

/** Line and pull posts of runs, each within reach and its share of the shorter bay beside it. */
const posts = (layout: Layout, touch: Touch): Found[] =>
  postsNear(layout, touch).flatMap(({ id, bay }): Found[] => {
    const post = layout.posts.get(id);
    if (post === undefined || (post.kind !== 'line' && post.kind !== 'pull')) return [];
    const away = distance(touch.at, post.at);
    if (away > Math.min(touch.reach, Math.max(post.od / 2, bay * shareOfBay))) return [];
    return [{ what: { kind: 'post', id }, distance: away }];
  });

const shots = (site: Site, touch: Touch): Found[] =>
  shotsNear(site.shots, touch).map(([id, shot]) => ({
    what: { kind: 'shot', id },
    distance: distance(touch.at, shot),
  }));

/** Ground that is kept clear, and posts that are held where none can stand. */
const pins = (site: Site, layout: Layout, touch: Touch): Found[] =>
  pinsNear(site, touch).flatMap(({ id, holds, body }): Found[] => {
    if (layout.posts.has(`post:${id}`)) return [];
    const what = holds === 'clear' ? ({ kind: 'pin', id } as const) : heldPost(id);
    return [{ what, distance: nearestOnSegment(touch.at, body).distance }];
  });

const heldPost = (id: PinId): Thing => ({ kind: 'post', id: `post:${id}` });

/** Tapes across open ground: along a leg or side that is what is touched. */
const tapes = (site: Site, touch: Touch): Found[] =>
  tapesNear(site, touch).map((tape) => ({
    what: { kind: 'tape', id: tape.id },
    distance: nearestOnSegment(touch.at, tape).distance,
  }));

const legs = (site: Site, touch: Touch): Found[] =>
  edgesNear(site, touch).flatMap((edge): Found[] => {
    if (edge.of.kind !== 'leg') return [];
    const { line, id } = edge.of;
    return [{ what: { kind: 'leg', line, id }, distance: nearestOnTrack(touch.at, edge).off }];
  });

const sides = (site: Site, touch: Touch): Found[] =>
  edgesNear(site, touch).flatMap((edge): Found[] => {
    if (edge.of.kind !== 'side') return [];
    const what = { kind: 'feature', id: edge.of.feature } as const;
    return [{ what, distance: nearestOnSegment(touch.at, edge).distance }];
  });

const spots = (site: Site, touch: Touch): Found[] =>
  spotsNear(site, touch).map(({ id, at, trunk }) => ({
    what: { kind: 'feature', id },
    distance: Math.max(0, distance(touch.at, at) - trunk),
  }));

/** Features that are ground and that the point lies in, the smallest first. */
const groundsAt = (site: Site, { at }: Touch): Thing[] =>
  groundsNear(site, { at, reach: inches(0) })
    .filter(({ corners }) => contains(corners, at))
    .toSorted((a, b) => a.size - b.size)
    .map(({ id }) => ({ kind: 'feature', id }));

/** Whether two things are one and the same. */
export const isSame = (a: Selection, b: Selection): boolean =>
  a !== null && b !== null && a.kind === b.kind && a.id === b.id;

/** Each thing where it is met first; kind and id tell it from any other. */
const eachOnce = (all: readonly Thing[]): Thing[] => {
  const met = new Map<string, Thing>();
  for (const what of all) {
    const name = `${what.kind} ${what.id}`;
    if (!met.has(name)) met.set(name, what);
  }
  return [...met.values()];
};

/**
 * Everything at a point, each once: gates before marks, then posts, shots and kept-clear
 * ground, then legs before features before tapes, the nearest of each first, at last the ground that the point lies in. A mark at which only a tree
 * or a note stands is that.
 */
export const hits = (site: Site, layout: Layout, touch: Touch): Thing[] => {
  const { reach } = touch;
  const all = [
    ...near(gates(layout, touch), reach),
    ...near(marks(site, touch), reach),
    ...near([...posts(layout, touch), ...shots(site, touch), ...pins(site, layout, touch)], reach),
    ...near(legs(site, touch), reach),
    ...near([...sides(site, touch), ...spots(site, touch)], reach),
    ...near(tapes(site, touch), reach),
    ...groundsAt(site, touch),
  ];
  return eachOnce(all);
};

/** The first of what is at a point; null on open ground. */
export const hit = (site: Site, layout: Layout, touch: Touch): Selection =>
  hits(site, layout, touch)[0] ?? null;
