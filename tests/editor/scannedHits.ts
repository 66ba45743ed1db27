import { contains } from '../../src/geometry/contains.ts';
import { distance } from '../../src/geometry/distance.ts';
import { lerp } from '../../src/geometry/lerp.ts';
import { nearestOnSegment } from '../../src/geometry/nearestOnSegment.ts';
import { lyingTapes } from '../../src/engine/survey/lyingTapes.ts';
import { nearestOnTrack } from '../../src/geometry/track.ts';
import { signedArea } from '../../src/geometry/signedArea.ts';
import type { SitePoint } from '../../src/geometry/point.ts';
import type { GateLayout, Layout } from '../../src/engine/layout.ts';
import type { Feature } from '../../src/site/feature.ts';
import type { PinId } from '../../src/site/ids.ts';
import { verticesOf } from '../../src/site/pathOrder.ts';
import type { Site } from '../../src/site/site.ts';
import type { Selection } from '../../src/store/selection.ts';
import { isSame, type Touch } from '../../src/editor/hit.ts';
import { edgesOf } from '../../src/editor/edges.ts';
import { entriesOf } from '../../src/editor/entriesOf.ts';
import { pinGround } from '../../src/editor/pinGround.ts';
import { standableMarks } from '../../src/editor/standableMarks.ts';

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
  entriesOf(layout.gates).map(([id, gate]) => ({
    what: { kind: 'gate', id },
    distance: gateDistance(gate, touch),
  }));

const marks = (site: Site, { at }: Touch): Found[] =>
  standableMarks(site).map(({ id, point }) => ({
    what: { kind: 'mark', id },
    distance: distance(at, point),
  }));

/** A post leaves two thirds of its shorter bay to be taken as the leg. */
const shareOfBay = 1 / 3;

/** Line and pull posts of runs, each within reach and its share of the shorter bay beside it. */
const posts = (layout: Layout, { at, reach }: Touch): Found[] =>
  Object.values(layout.lines).flatMap(({ runs }) =>
    runs.flatMap(({ posts: row, spaces }) =>
      row.flatMap(({ post: id }, n): Found[] => {
        const post = layout.posts.get(id);
        if (post === undefined || (post.kind !== 'line' && post.kind !== 'pull')) return [];
        const bay = Math.min(spaces[n - 1]?.length ?? Infinity, spaces[n]?.length ?? Infinity);
        const away = distance(at, post.at);
        if (away > Math.min(reach, Math.max(post.od / 2, bay * shareOfBay))) return [];
        return [{ what: { kind: 'post', id }, distance: away }];
      }),
    ),
  );

const shots = (site: Site, { at }: Touch): Found[] =>
  entriesOf(site.shots).map(([id, shot]) => ({
    what: { kind: 'shot', id },
    distance: distance(at, shot),
  }));

/** Ground that is kept clear, and posts that are held where none can stand. */
const pins = (site: Site, layout: Layout, { at }: Touch): Found[] =>
  entriesOf(site.pins).flatMap(([id, pin]): Found[] => {
    const ground = pinGround(site, pin);
    if (ground === null || layout.posts.has(`post:${id}`)) return [];
    const what = pin.holds.kind === 'clear' ? ({ kind: 'pin', id } as const) : heldPost(id);
    return [{ what, distance: nearestOnSegment(at, ground.body).distance }];
  });

const heldPost = (id: PinId): Thing => ({ kind: 'post', id: `post:${id}` });

/** Tapes across open ground: along a leg or side that is what is touched. */
const tapes = (site: Site, { at }: Touch): Found[] =>
  lyingTapes(site)
    .filter(({ along }) => !along)
    .map((tape) => ({
      what: { kind: 'tape', id: tape.id },
      distance: nearestOnSegment(at, tape).distance,
    }));

const legs = (site: Site, { at }: Touch): Found[] =>
  edgesOf(site).flatMap((edge): Found[] => {
    if (edge.of.kind !== 'leg') return [];
    const { line, id } = edge.of;
    return [{ what: { kind: 'leg', line, id }, distance: nearestOnTrack(at, edge).off }];
  });

const sides = (site: Site, { at }: Touch): Found[] =>
  edgesOf(site).flatMap((edge): Found[] => {
    if (edge.of.kind !== 'side') return [];
    const what = { kind: 'feature', id: edge.of.feature } as const;
    return [{ what, distance: nearestOnSegment(at, edge).distance }];
  });

const spots = (site: Site, { at }: Touch): Found[] =>
  entriesOf(site.features).flatMap(([id, feature]): Found[] => {
    const mark = 'mark' in feature ? site.marks[feature.mark] : undefined;
    if (mark === undefined) return [];
    const trunk = feature.kind === 'tree' ? feature.trunk : 0;
    const away = Math.max(0, distance(at, mark) - trunk);
    return [{ what: { kind: 'feature', id }, distance: away }];
  });

/** Features that are ground and that the point lies in, the smallest first. A lot is no ground of its own. */
const groundsAt = (site: Site, { at }: Touch): Thing[] => {
  const cornersOf = (feature: Feature): SitePoint[] => {
    if (!('path' in feature) || feature.kind === 'utility' || feature.kind === 'boundary')
      return [];
    return verticesOf(feature.path).flatMap(({ mark }) => site.marks[mark] ?? []);
  };
  const within = entriesOf(site.features)
    .map(([id, feature]) => ({ id, corners: cornersOf(feature) }))
    .filter(({ corners }) => contains(corners, at));
  const size = (corners: readonly SitePoint[]): number => Math.abs(signedArea(corners));
  return within
    .toSorted((a, b) => size(a.corners) - size(b.corners))
    .map(({ id }) => ({ kind: 'feature', id }));
};

/** What `hits` finds, by asking everything on a site how far off it is. */
export const scannedHits = (site: Site, layout: Layout, touch: Touch): Thing[] => {
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
  return all.filter((what, n) => all.findIndex((one) => isSame(one, what)) === n);
};
