import type { DxfEntity, DxfVertex } from 'dxf';
import { distance } from '../../geometry/distance.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { FoundPath } from '../../site/found.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { plainDxfText } from './plainDxfText.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Entities that can stand on a site, or hold what can. */
export const drawnTypes: ReadonlySet<string> = new Set([
  'LINE',
  'LWPOLYLINE',
  'POLYLINE',
  'ARC',
  'CIRCLE',
  'POINT',
  'TEXT',
  'MTEXT',
  'INSERT',
]);

/** One entity in the units of its file: a path, a point, a text, or nothing of the kind. */
export type EntityShape =
  | { readonly kind: 'path'; readonly path: FoundPath }
  | { readonly kind: 'point'; readonly at: SitePoint; readonly z: number | null }
  | { readonly kind: 'text'; readonly at: SitePoint; readonly name: string }
  | null;

const pointOf = ({ x = 0, y = 0 }: DxfVertex): SitePoint => ({ x, y });

const pathOf = (points: readonly SitePoint[], bows: readonly number[], closed: boolean) =>
  ({ kind: 'path', path: { name: '', points, bows, closed } }) as const;

const lineOf = ({ start = {}, end = {} }: DxfEntity): EntityShape =>
  pathOf([pointOf(start), pointOf(end)], [0, 0], false);

/** M = bC / 2: the bulge is the middle ordinate over half the chord; it goes round to the right. */
const polylineOf = ({ vertices = [], closed = false }: DxfEntity): EntityShape => {
  const points = vertices.map(pointOf);
  const bows = vertices.map(({ bulge = 0 }, n) => {
    const [from, to] = [points[n], points[(n + 1) % points.length]];
    const last = n === points.length - 1;
    if (bulge === 0 || from === undefined || to === undefined || (last && !closed)) return 0;
    return (-bulge * distance(from, to)) / 2;
  });
  return pathOf(points, bows, closed);
};

const circleOf = (at: SitePoint, radius: number): EntityShape =>
  pathOf(
    [
      { x: at.x + radius, y: at.y },
      { x: at.x - radius, y: at.y },
    ],
    [-radius, -radius],
    true,
  );

/** Counter-clockwise from its start to its end; in two halves, so that no piece is a whole turn. */
const arcOf = (at: SitePoint, radius: number, start: number, end: number): EntityShape => {
  const turn = 2 * Math.PI;
  const sweep = (((end - start) % turn) + turn) % turn || turn;
  const points = [start, start + sweep / 2, start + sweep].map((angle) => ({
    x: at.x + radius * Math.cos(angle),
    y: at.y + radius * Math.sin(angle),
  }));
  const bow = -radius * (1 - Math.cos(sweep / 4));
  return pathOf(points, [bow, bow, 0], false);
};

const shapeOf = (entity: DxfEntity): EntityShape => {
  const { r = NaN, startAngle = NaN, endAngle = NaN, string = '' } = entity;
  switch (entity.type) {
    case 'LINE':
      return lineOf(entity);
    case 'LWPOLYLINE':
    case 'POLYLINE':
      return polylineOf(entity);
    case 'CIRCLE':
      return circleOf(pointOf(entity), r);
    case 'ARC':
      return arcOf(pointOf(entity), r, startAngle, endAngle);
    case 'POINT': {
      const { z = 0 } = entity;
      return { kind: 'point', at: pointOf(entity), z: z === 0 ? null : z };
    }
    case 'TEXT':
    case 'MTEXT': {
      const name = plainDxfText(string);
      return name === '' ? null : { kind: 'text', at: pointOf(entity), name };
    }
    default:
      return null;
  }
};

const isFinite = (shape: EntityShape): boolean => {
  if (shape === null) return true;
  if (shape.kind !== 'path') {
    const { x, y } = shape.at;
    return [x, y, shape.kind === 'point' ? (shape.z ?? 0) : 0].every(Number.isFinite);
  }
  const { points, bows } = shape.path;
  return points.every(({ x, y }) => Number.isFinite(x + y)) && bows.every(Number.isFinite);
};

/**
 * What one entity draws, in plan. Null for what is no line, arc, point or text. Unread with one line
 * where a number of it cannot be read, or the corners of a polyline are those of faces.
 */
export const entityShape = (entity: DxfEntity): Parsed<EntityShape> => {
  if (entity.polygonMesh === true || entity.polyfaceMesh === true) {
    return unread(phrase`is a mesh of faces: expected lines`);
  }
  const shape = shapeOf(entity);
  return isFinite(shape) ? read(shape) : unread(phrase`expected numbers for its coordinates`);
};
