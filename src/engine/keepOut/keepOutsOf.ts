import { boundsOf, expandBounds } from '../../geometry/bounds.ts';
import { edges as edgesOf } from '../../geometry/polygon.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Feature } from '../../site/feature.ts';
import type { FeatureId } from '../../site/ids.ts';
import type { Path } from '../../site/path.ts';
import { verticesOf } from '../../site/pathOrder.ts';
import type { Site } from '../../site/site.ts';
import { newCarry, type Carry } from '../carry/carry.ts';
import type { KeepOut } from './keepOut.ts';

type Shape = Pick<KeepOut, 'kind' | 'edges' | 'radius' | 'ring'>;

const placesOf = (site: Site, path: Path): SitePoint[] =>
  verticesOf(path).flatMap(({ mark }) => site.marks[mark] ?? []);

const chained = (points: readonly SitePoint[]): Shape['edges'] =>
  points.length === 1
    ? points.map((point) => ({ start: point, end: point }))
    : points.slice(1).map((end, n) => ({ start: points[n] ?? end, end }));

const shapeOf = (site: Site, feature: Feature): Shape | null => {
  switch (feature.kind) {
    case 'utility': {
      const { path, width, tolerance, run } = feature;
      if (run === 'overhead') return null;
      const edges = chained(placesOf(site, path));
      return { kind: 'utility', edges, radius: width / 2 + tolerance, ring: null };
    }
    case 'tree': {
      const at = site.marks[feature.mark];
      if (at === undefined) return null;
      const radius = Math.max(feature.trunk, feature.roots);
      return { kind: 'roots', edges: [{ start: at, end: at }], radius, ring: null };
    }
    case 'keep-out': {
      const ring = placesOf(site, feature.path);
      return { kind: 'keep-out', edges: edgesOf(ring), radius: 0, ring };
    }
    case 'paving':
      return {
        kind: 'joint',
        edges: edgesOf(placesOf(site, feature.path)),
        radius: 0,
        ring: null,
      };
    case 'building':
    case 'pool':
    case 'boundary':
    case 'height zone':
    case 'note':
      return null;
  }
};

const keepOutOf = (site: Site, id: FeatureId, feature: Feature): KeepOut | null => {
  const shape = shapeOf(site, feature);
  const bounds = boundsOf(shape?.edges.flatMap(({ start, end }) => [start, end]) ?? []);
  if (shape === null || bounds === null) return null;
  return { id, ...shape, bounds: expandBounds(bounds, shape.radius) };
};

/** The marks that a feature is drawn to. */
const marksOf = (site: Site, feature: Feature): unknown[] => {
  if ('path' in feature) return Object.values(feature.path).map(({ mark }) => site.marks[mark]);
  return 'mark' in feature ? [site.marks[feature.mark]] : [];
};

/**
 * The ground of a site in which no part of a hole may lie: half the width of a buried service and its
 * tolerance on each side (CGA Best Practice 5.19), roots, what was drawn as keep-out, and the edges
 * of paving.
 */
export const keepOutsOf = (site: Site, carry: Carry = newCarry()): readonly KeepOut[] => {
  const known = carry.shelf<KeepOut | null>('keep-out');
  return (Object.entries(site.features) as [FeatureId, Feature][]).flatMap(([id, feature]) => {
    const from = [feature, ...marksOf(site, feature)];
    return known.take(id, from, () => keepOutOf(site, id, feature)) ?? [];
  });
};
