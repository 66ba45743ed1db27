import type { FoundGroup, FoundPath, FoundPoint, FoundShape } from '../site/found.ts';
import type { Drawn } from './drawn.ts';

const shapes: readonly FoundShape[] = ['areas', 'holes', 'lines', 'points', 'heights', 'texts'];

const pathsOf = (drawn: readonly Drawn[], shape: FoundShape): FoundPath[] =>
  drawn.flatMap((one) => {
    if (!('path' in one)) return [];
    const own = one.path.closed ? (one.kind === 'hole' ? 'holes' : 'areas') : 'lines';
    return own === shape ? [one.path] : [];
  });

const pointsOf = (drawn: readonly Drawn[], shape: FoundShape): FoundPoint[] =>
  drawn.flatMap((one) => {
    if ('path' in one) return [];
    const { name, at } = one;
    if (one.kind === 'text') return shape === 'texts' ? [{ name, at, z: null }] : [];
    const fits = shape === 'points' || (shape === 'heights' && one.z !== null);
    return fits ? [{ name, at, z: one.z }] : [];
  });

const groupOf = (layer: string, drawn: readonly Drawn[], shape: FoundShape): FoundGroup | null => {
  const key = `${layer} › ${shape}`;
  if (shape === 'areas' || shape === 'holes' || shape === 'lines') {
    const paths = pathsOf(drawn, shape);
    return paths.length === 0 ? null : { key, layer, shape, paths };
  }
  const points = pointsOf(drawn, shape);
  return points.length === 0 ? null : { key, layer, shape, points };
};

/**
 * Things of a file by layer, in the order of the layers' names, and by shape. A point with a height is
 * with the points and with the heights.
 */
export const grouped = (drawn: readonly Drawn[]): FoundGroup[] => {
  const layers = new Map<string, Drawn[]>();
  for (const one of drawn) {
    const own = layers.get(one.layer);
    if (own === undefined) layers.set(one.layer, [one]);
    else own.push(one);
  }
  return [...layers.keys()]
    .toSorted((a, b) => a.localeCompare(b, 'en', { numeric: true }))
    .flatMap((layer) =>
      shapes.flatMap((shape) => groupOf(layer, layers.get(layer) ?? [], shape) ?? []),
    );
};
