import { farthest } from '../../geometry/tolerance.ts';
import type { HeightLimits } from '../../site/found.ts';
import { inches } from '../../units/inches.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { labelText } from '../labelText.ts';
import { geometryShapes, geometryTypes, type GeoItem } from './geometryShapes.ts';
import { shown } from './position.ts';
import { phrase } from '../../phrases/phrase.ts';

/** A shape of a file, or the line that refuses it, and the name of what it belongs to. */
export interface NamedItem extends GeoItem {
  readonly name: string;
  /** The layer that its properties name; null for none. */
  readonly layer: string | null;
  /** Its height in inches, where its properties tell it; null for none. */
  readonly height: number | null;
  /** How high fence may stand in it, where its properties tell that; null for none. */
  readonly limits: HeightLimits | null;
}

/** What a file has, and how many of its features say no place. */
export interface GeoFeatures {
  readonly items: readonly NamedItem[];
  readonly unplaced: number;
}

type Plain = Readonly<Record<string, unknown>>;

const isPlain = (value: unknown): value is Plain =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const nameKey = /^(?:name|label|title)$/i;

const nameOf = ({ id, properties }: Plain): string => {
  const named = isPlain(properties)
    ? Object.entries(properties).find(([key, value]) => nameKey.test(key) && value !== null)
    : undefined;
  const name = named?.[1] ?? id;
  return typeof name === 'string' || typeof name === 'number' ? labelText(String(name)) : '';
};

/** Kinds of things of a yard; another word under `kind` says something else of a parcel. */
const kinds: ReadonlySet<string> = new Set([
  'fence line',
  'gate',
  'post',
  'boundary',
  'building',
  'paving',
  'pool',
  'keep-out',
  'height zone',
  'utility',
  'tree',
  'note',
  'mark',
  'grade shot',
]);

/** The layer of a feature: what its properties name one, or its kind; a utility's with its service, ground with a
 * height limit with what it is. */
const layerOf = ({ properties }: Plain): string | null => {
  if (!isPlain(properties)) return null;
  const { kind, service, of } = properties;
  if (typeof kind === 'string' && kinds.has(kind)) {
    const more = kind === 'height zone' ? of : service;
    return labelText(typeof more === 'string' ? `${kind}, ${more}` : kind);
  }
  const layer = Object.entries(properties).find(([key]) => key.toLowerCase() === 'layer')?.[1];
  return typeof layer === 'string' && labelText(layer) !== '' ? labelText(layer) : null;
};

const heightOf = ({ properties }: Plain): number | null => {
  const height = isPlain(properties) ? properties['height_in'] : null;
  return typeof height === 'number' && Number.isFinite(height) ? height : null;
};

const limitsOf = ({ properties }: Plain): HeightLimits | null => {
  const [solid, open] = ['solid_in', 'open_in'].map((key) =>
    isPlain(properties) ? properties[key] : null,
  );
  const isLimit = (one: unknown): one is number =>
    typeof one === 'number' && one >= 0 && one <= farthest;
  return isLimit(solid) && isLimit(open) ? { solid: inches(solid), open: inches(open) } : null;
};

const bare = { name: '', layer: null, height: null, limits: null } as const;

/** Names of longitude and latitude on WGS 84, which older files say though RFC 7946 has no other. */
const usual = /CRS:?:?84$|EPSG:?:?(?:[\d.]*:)?4326$/i;

const crsFault = ({ crs }: Plain): string | null => {
  if (crs === undefined || crs === null) return null;
  const properties = isPlain(crs) ? crs['properties'] : undefined;
  const name = isPlain(properties) ? properties['name'] : undefined;
  if (typeof name === 'string' && usual.test(name)) return null;
  return phrase`crs: expected longitude and latitude on WGS 84 (RFC 7946), found ${shown(name ?? crs)}`;
};

const featureItems = (value: unknown, where: string): NamedItem[] | null => {
  if (!isPlain(value) || value['type'] !== 'Feature') {
    const found = shown(isPlain(value) ? value['type'] : value);
    return [{ where, ...bare, shape: unread(phrase`expected a feature, found ${found}`) }];
  }
  if (value['geometry'] === null) return null;
  const items = geometryShapes(value['geometry'], `${where} › geometry`);
  if (items.length === 0) return null;
  const named = {
    name: nameOf(value),
    layer: layerOf(value),
    height: heightOf(value),
    limits: limitsOf(value),
  };
  return items.map((one) => ({ ...one, ...named }));
};

const collected = (all: readonly (readonly NamedItem[] | null)[]): GeoFeatures => ({
  items: all.flatMap((one) => one ?? []),
  unplaced: all.filter((one) => one === null).length,
});

/**
 * Everything that a GeoJSON document (RFC 7946) has, each by its place in it, counted from 1. Unread
 * with one line for a document that is none, or of another reference system.
 */
export const geoFeatures = (document: unknown): Parsed<GeoFeatures> => {
  if (!isPlain(document))
    return unread(phrase`expected a GeoJSON object, found ${shown(document)}`);
  const fault = crsFault(document);
  if (fault !== null) return unread(fault);
  const { type, features } = document;
  if (type === 'FeatureCollection') {
    if (!Array.isArray(features)) {
      return unread(phrase`features: expected a list, found ${shown(features)}`);
    }
    const all = features.map((one: unknown, n) => featureItems(one, `features › ${n + 1}`));
    return read(collected(all));
  }
  if (type === 'Feature') return read(collected([featureItems(document, 'feature')]));
  if (typeof type === 'string' && geometryTypes.includes(type)) {
    const items = geometryShapes(document, 'geometry').map((one) => ({ ...one, ...bare }));
    return read({ items, unplaced: 0 });
  }
  return unread(
    phrase`type: expected FeatureCollection, Feature or a geometry, found ${shown(type)}`,
  );
};
