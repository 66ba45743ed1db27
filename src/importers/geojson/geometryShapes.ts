import { read, unread, type Parsed } from '../../units/parsed.ts';
import { readPosition, shown, type Position } from './position.ts';
import { phrase } from '../../phrases/phrase.ts';

/** One line, ring or point of a GeoJSON file, on earth. A ring is without its last position. */
export interface GeoShape {
  readonly kind: 'ring' | 'hole' | 'line' | 'point';
  readonly positions: readonly Position[];
  /** Of a hole where in the file the ring stands that it is cut from; else null. */
  readonly inside: string | null;
}

/** A shape, or one line for what should have been one, and where in the file it stands. */
export interface GeoItem {
  readonly where: string;
  readonly shape: Parsed<GeoShape>;
}

/** Collections in collections go no deeper. */
const deepest = 8;

const listIn = (value: unknown, of: string): Parsed<readonly unknown[]> =>
  Array.isArray(value)
    ? read(value)
    : unread(phrase`expected a list of ${of}, found ${shown(value)}`);

const positionsIn = (value: unknown, least: number): Parsed<readonly Position[]> => {
  const list = listIn(value, phrase`positions`);
  if (!list.ok) return list;
  const positions: Position[] = [];
  for (const [n, one] of list.value.entries()) {
    const position = readPosition(one);
    if (!position.ok) return unread(phrase`position ${n + 1}: ${position.reason}`);
    positions.push(position.value);
  }
  if (positions.length >= least) return read(positions);
  return unread(phrase`expected ${least} positions or more, found ${positions.length}`);
};

/** A linear ring (RFC 7946, 3.1.6): four positions or more, the last the same as the first. */
const ringIn = (value: unknown): Parsed<readonly Position[]> => {
  const positions = positionsIn(value, 4);
  if (!positions.ok) return positions;
  const [first, last] = [positions.value[0], positions.value.at(-1)];
  const closed = first?.longitude === last?.longitude && first?.latitude === last?.latitude;
  if (closed) return read(positions.value.slice(0, -1));
  return unread(phrase`expected a ring that ends where it begins, found one that stays open`);
};

const item = (
  where: string,
  kind: GeoShape['kind'],
  positions: Parsed<readonly Position[]>,
  inside: string | null = null,
): GeoItem => ({
  where,
  shape: positions.ok ? read({ kind, positions: positions.value, inside }) : positions,
});

const lineItem = (value: unknown, where: string): GeoItem[] => [
  item(where, 'line', positionsIn(value, 2)),
];

const pointItem = (value: unknown, where: string): GeoItem[] => {
  const position = readPosition(value);
  return [item(where, 'point', position.ok ? read([position.value]) : position)];
};

/** The first ring is the rim, the others are holes in it (RFC 7946, 3.1.6). */
const polygonItems = (value: unknown, where: string): GeoItem[] =>
  each(value, where, rings, (ring, at, n) => [
    n === 0
      ? item(at, 'ring', ringIn(ring))
      : item(at, 'hole', ringIn(ring), placeOf(where, rings, 0)),
  ]);

/** What a list is of: many, and one. */
type Nouns = readonly [many: string, one: string];

const rings: Nouns = ['rings', 'ring'];

const placeOf = (where: string, [, one]: Nouns, n: number): string => `${where} › ${one} ${n + 1}`;

const each = (
  value: unknown,
  where: string,
  of: Nouns,
  one: (value: unknown, where: string, n: number) => readonly GeoItem[],
): GeoItem[] => {
  const list = listIn(value, of[0]);
  if (!list.ok) return [{ where, shape: list }];
  return list.value.flatMap((inner, n) => one(inner, placeOf(where, of, n), n));
};

type Reader = (coordinates: unknown, where: string) => GeoItem[];

/** The types of geometry that have coordinates (RFC 7946, 3.1). */
const readers: Readonly<Record<string, Reader>> = {
  Point: pointItem,
  MultiPoint: (value, where) => each(value, where, ['points', 'point'], pointItem),
  LineString: lineItem,
  MultiLineString: (value, where) => each(value, where, ['lines', 'line'], lineItem),
  Polygon: polygonItems,
  MultiPolygon: (value, where) => each(value, where, ['polygons', 'polygon'], polygonItems),
};

export const geometryTypes: readonly string[] = [...Object.keys(readers), 'GeometryCollection'];

/** Coordinates of no place, which may be taken for no geometry (RFC 7946, 3.1). */
const isEmpty = (coordinates: unknown): boolean =>
  Array.isArray(coordinates) && coordinates.length === 0;

/**
 * All shapes of a geometry at a place in the file, each by itself; none for one that says no place.
 * Never throws.
 */
export const geometryShapes = (value: unknown, where: string, depth = 0): GeoItem[] => {
  const refuse = (reason: string): GeoItem[] => [{ where, shape: unread(reason) }];
  if (typeof value !== 'object' || value === null) {
    return refuse(phrase`expected a geometry, found ${shown(value)}`);
  }
  const { type, coordinates, geometries } = value as Record<string, unknown>;
  if (type === 'GeometryCollection') {
    if (depth >= deepest) return refuse(phrase`expected collections less deep in one another`);
    return each(geometries, where, ['geometries', 'geometry'], (inner, at) =>
      geometryShapes(inner, at, depth + 1),
    );
  }
  const reader =
    typeof type === 'string' && Object.hasOwn(readers, type) ? readers[type] : undefined;
  if (reader !== undefined) return isEmpty(coordinates) ? [] : reader(coordinates, where);
  return refuse(phrase`type: expected ${geometryTypes.join(', ')}; found ${shown(type)}`);
};
