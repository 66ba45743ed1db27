import type { Dxf, DxfBlock, DxfEntity } from 'dxf';
import { distance } from '../../geometry/distance.ts';
import { farthest } from '../../geometry/tolerance.ts';
import { phrase } from '../../phrases/phrase.ts';
import { straightened } from '../../site/straightened.ts';
import type { FoundRefusal } from '../../site/found.ts';
import { inches } from '../../units/inches.ts';
import { quotedText } from '../../units/quotedText.ts';
import { labelText } from '../labelText.ts';
import type { Drawn } from '../drawn.ts';
import {
  applied,
  areaScale,
  chained,
  keepsCircles,
  rotatedBy,
  largest,
  scaled,
  shifted,
  type Affine,
} from './affine.ts';
import { drawnTypes, entityShape, type EntityShape } from './entityShape.ts';

/** What the entities of a file come to, blocks taken apart. */
export interface Exploded {
  readonly drawn: readonly Drawn[];
  readonly refused: readonly FoundRefusal[];
  /** How many entities are on layouts of paper, which are no ground. */
  readonly onPaper: number;
}

/** Blocks in blocks go no deeper, and all things of a file together come to no more. */
const [deepest, most] = [16, 400_000];

/** What blocks come to, and the pieces of their ellipses: a small file can ask for any number of them. */
const mostOfBlocks = 50_000;

/** How far inside its curve the pieces of an ellipse lie, in inches. */
const off = inches(1 / 4);

interface Work {
  readonly blocks: ReadonlyMap<string, DxfBlock>;
  readonly drawn: Drawn[];
  readonly refused: FoundRefusal[];
  /** How many entities were looked at, and how many of those, with pieces of ellipses, are of blocks. */
  steps: number;
  ofBlocks: number;
}

interface Place {
  readonly affine: Affine;
  /** What layer 0 of a block is on. */
  readonly layer: string | null;
  readonly depth: number;
  readonly where: string;
}

/** What is drawn on the back of the plane is mirrored; what is on neither side cannot be read. */
const facing = ({ type, extrusionX = 0, extrusionY = 0, extrusionZ = 1 }: DxfEntity): number => {
  // lines and points have coordinates of the world
  if (type === 'LINE' || type === 'POINT') return 1;
  if (Math.abs(extrusionX) > 1e-9 || Math.abs(extrusionY) > 1e-9) return 0;
  return extrusionZ < 0 ? -1 : 1;
};

const placed = (
  shape: NonNullable<EntityShape>,
  affine: Affine,
  layer: string,
  where: string,
): Drawn => {
  if (shape.kind === 'point') {
    const z = shape.z === null ? null : inches(shape.z * Math.sqrt(Math.abs(areaScale(affine))));
    return { kind: 'point', layer, where, name: '', at: applied(affine, shape.at), z };
  }
  if (shape.kind === 'text') {
    return { kind: 'text', layer, where, name: shape.name, at: applied(affine, shape.at) };
  }
  const area = areaScale(affine);
  const size = Math.sqrt(Math.abs(area));
  const path = keepsCircles(affine) ? shape.path : straightened(shape.path, inches(off / size));
  const bow = size * Math.sign(area);
  const points = path.points.map((point) => applied(affine, point));
  return {
    kind: 'path',
    layer,
    where,
    path: { ...path, points, bows: path.bows.map((one) => one * bow) },
  };
};

const thousands = (limit: number): string => limit.toLocaleString('en-US');

const count = (work: Work, depth: number, things = 1): void => {
  work.steps += things;
  if (depth > 0) work.ofBlocks += things;
  if (work.ofBlocks > mostOfBlocks)
    throw new RangeError(phrase`its blocks come to more than ${thousands(mostOfBlocks)} things`);
  if (work.steps > most) throw new RangeError(phrase`it has more than ${thousands(most)} things`);
};

const insert = (entity: DxfEntity, block: DxfBlock, place: Place, work: Work): void => {
  const { x = 0, y = 0, scaleX = 1, scaleY = 1, rotation = 0 } = entity;
  const { columnSpacing = 0, rowSpacing = 0 } = entity;
  const [columns, rows] = [Math.max(1, entity.columnCount ?? 1), Math.max(1, entity.rowCount ?? 1)];
  for (let n = 0; n < columns * rows; n += 1) {
    count(work, place.depth + 1);
    const affine = chained(
      place.affine,
      scaled(facing(entity), 1),
      shifted(x, y),
      rotatedBy(rotation),
      shifted((n % columns) * columnSpacing, Math.floor(n / columns) * rowSpacing),
      scaled(scaleX, scaleY),
      shifted(-(block.x ?? 0), -(block.y ?? 0)),
    );
    const inside = { ...place, affine, layer: layerOf(entity, place), depth: place.depth + 1 };
    for (const inner of block.entities ?? []) explode(inner, inside, work);
  }
};

const layerOf = ({ layer = '0' }: DxfEntity, place: Place): string =>
  layer === '0' && place.layer !== null ? place.layer : labelText(layer) || '0';

const explodeInsert = (entity: DxfEntity, place: Place, work: Work): string | null => {
  const name = entity.block ?? '';
  const block = work.blocks.get(name.toUpperCase());
  if (block === undefined) return phrase`its block ${quotedText(name)} is not in the file`;
  if (place.depth >= deepest) return phrase`its blocks lie too deep in one another`;
  const { x = 0, y = 0, scaleX = 1, scaleY = 1, rotation = 0 } = entity;
  const { columnSpacing = 0, rowSpacing = 0, columnCount = 1, rowCount = 1 } = entity;
  const rows = [columnSpacing, rowSpacing, columnCount, rowCount];
  const numbers = [x, y, scaleX, scaleY, rotation, block.x ?? 0, block.y ?? 0, ...rows];
  if (!numbers.every(Number.isFinite)) return phrase`expected numbers for its coordinates`;
  insert(entity, block, place, work);
  return null;
};

/** A curve in the units of its file, whatever it is scaled by: the square of more is past all numbers. */
const mostReach = 1e100;

/**
 * How far the curved legs of a shape reach, in the units of its file: half their chords, and how far they bow
 * out. What is too large is so refused before any piece of it is made.
 */
const reach = (shape: NonNullable<EntityShape>): number => {
  if (shape.kind !== 'path') return 0;
  const { points, bows } = shape.path;
  return bows.reduce((so, bow, n) => {
    const [from, to] = [points[n], points[(n + 1) % points.length]];
    if (bow === 0 || from === undefined || to === undefined) return so;
    return Math.max(so, Math.abs(bow), distance(from, to) / 2);
  }, 0);
};

const pointsOf = (shape: NonNullable<EntityShape>): number =>
  shape.kind === 'path' ? shape.path.points.length : 1;

/** False where blocks made of numbers what is none: too large a scale, or one of 0 of what is without end. */
const isPlaced = (drawn: Drawn): boolean =>
  ('path' in drawn ? drawn.path.points : [drawn.at]).every(({ x, y }) => Number.isFinite(x + y));

const drawOne = (entity: DxfEntity, place: Place, work: Work): string | null => {
  const shape = entityShape(entity);
  if (!shape.ok) return shape.reason;
  if (shape.value === null) return null;
  const affine = chained(place.affine, scaled(facing(entity), 1));
  const own = reach(shape.value);
  const far = own > mostReach ? Infinity : own * largest(affine);
  if (!Number.isFinite(areaScale(affine))) return phrase`expected numbers for its coordinates`;
  if (!(far <= farthest)) return phrase`has a curve of over 10 miles`;
  const drawn = placed(shape.value, affine, layerOf(entity, place), place.where);
  if ('path' in drawn) count(work, place.depth, drawn.path.points.length - pointsOf(shape.value));
  if (!isPlaced(drawn)) return phrase`expected numbers for its coordinates`;
  work.drawn.push(drawn);
  return null;
};

const explode = (entity: DxfEntity, place: Place, work: Work): void => {
  count(work, place.depth);
  const tilted = facing(entity) === 0 && drawnTypes.has(entity.type);
  const one = entity.type === 'INSERT' ? explodeInsert : drawOne;
  const reason = tilted
    ? phrase`is drawn on a slope: expected it in plan`
    : one(entity, place, work);
  const last = work.refused.at(-1);
  // what a block has at fault is said once, however often it is inserted
  if (reason === null || (last?.where === place.where && last.reason === reason)) return;
  work.refused.push({ where: place.where, reason });
};

/**
 * All lines, arcs, points and texts of a file in inches, those of its blocks where they are inserted:
 * scaled, turned, mirrored and in rows. RangeError with one line for more than can be drawn.
 */
export const exploded = (dxf: Dxf, inchesPerUnit: number): Exploded => {
  const blocks = new Map(dxf.blocks.map((block) => [(block.name ?? '').toUpperCase(), block]));
  const work: Work = { blocks, drawn: [], refused: [], steps: 0, ofBlocks: 0 };
  let onPaper = 0;
  dxf.entities.forEach((entity, n) => {
    if (entity.paperSpace === 1) {
      onPaper += 1;
      return;
    }
    const layer = labelText(entity.layer ?? '0');
    const where = phrase`entity ${n + 1}, ${labelText(entity.type).slice(0, 24)} on ${layer.slice(0, 80)}`;
    const affine = scaled(inchesPerUnit, inchesPerUnit);
    explode(entity, { affine, layer: null, depth: 0, where }, work);
  });
  return { drawn: work.drawn, refused: work.refused, onPaper };
};
