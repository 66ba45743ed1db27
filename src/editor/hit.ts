import { contains } from '../geometry/contains.ts';
import { distance } from '../geometry/distance.ts';
import { lerp } from '../geometry/lerp.ts';
import { nearestOnSegment } from '../geometry/nearestOnSegment.ts';
import { signedArea } from '../geometry/signedArea.ts';
import type { SitePoint } from '../geometry/point.ts';
import type { GateLayout, Layout } from '../engine/layout.ts';
import type { Feature } from '../site/feature.ts';
import type { FeatureId } from '../site/ids.ts';
import { verticesOf } from '../site/pathOrder.ts';
import type { Site } from '../site/site.ts';
import type { Selection } from '../store/selection.ts';
import type { Inches } from '../units/inches.ts';
import { edgesOf } from './edges.ts';
import { entriesOf } from './entriesOf.ts';
import { standableMarks } from './standableMarks.ts';

/** Where a hand touches the drawing, in inches on the ground. */
export interface Touch {
  readonly at: SitePoint;
  /** How far from the point a thing still counts as touched. */
  readonly reach: Inches;
}

interface Found {
  readonly what: Selection;
  readonly distance: number;
}

const nearest = (all: readonly Found[], reach: number): Selection | undefined => {
  const near = all.filter((one) => one.distance <= reach);
  return near.toSorted((a, b) => a.distance - b.distance)[0]?.what;
};

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

const legs = (site: Site, { at }: Touch): Found[] =>
  edgesOf(site).flatMap((edge): Found[] => {
    if (edge.of.kind !== 'leg') return [];
    const { line, id } = edge.of;
    return [{ what: { kind: 'leg', line, id }, distance: nearestOnSegment(at, edge).distance }];
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

/** Features that are ground: the smallest that the point lies in. A lot is no ground of its own. */
const groundAt = (site: Site, { at }: Touch): FeatureId | undefined => {
  const cornersOf = (feature: Feature): SitePoint[] => {
    if (!('path' in feature) || feature.kind === 'utility' || feature.kind === 'boundary')
      return [];
    return verticesOf(feature.path).flatMap(({ mark }) => site.marks[mark] ?? []);
  };
  const within = entriesOf(site.features)
    .map(([id, feature]) => ({ id, corners: cornersOf(feature) }))
    .filter(({ corners }) => contains(corners, at));
  const size = (corners: readonly SitePoint[]): number => Math.abs(signedArea(corners));
  return within.toSorted((a, b) => size(a.corners) - size(b.corners))[0]?.id;
};

/**
 * What is at a point: a gate before a mark, a mark before a leg, a leg before a feature, the
 * nearest of each; null on open ground. A mark at which only a tree or a note stands is that.
 */
export const hit = (site: Site, layout: Layout, touch: Touch): Selection => {
  const { reach } = touch;
  const found =
    nearest(gates(layout, touch), reach) ??
    nearest(marks(site, touch), reach) ??
    nearest(legs(site, touch), reach) ??
    nearest([...sides(site, touch), ...spots(site, touch)], reach);
  if (found !== undefined) return found;
  const id = groundAt(site, touch);
  return id === undefined ? null : { kind: 'feature', id };
};
