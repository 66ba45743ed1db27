import { laidFlat, lengthenedBy } from '../../geometry/laidFlat.ts';
import { localPlane, type LocalPlane, type PlaceOnEarth } from '../../geometry/localPlane.ts';
import { selfCrossing } from '../../geometry/selfCrossing.ts';
import { farthest } from '../../geometry/tolerance.ts';
import type { Found, FoundRefusal } from '../../site/found.ts';
import type { Origin } from '../../site/origin.ts';
import { inches } from '../../units/inches.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { quotedText } from '../../units/quotedText.ts';
import { toDegrees, radians } from '../../units/radians.ts';
import { wholeFile, type Drawn } from '../drawn.ts';
import { inchesIn } from '../fileUnit.ts';
import { foundFrom } from '../foundFrom.ts';
import { heightsLost } from '../heightsLost.ts';
import { together } from '../together.ts';
import { geoFeatures, type NamedItem } from './geoFeatures.ts';
import type { GeoShape } from './geometryShapes.ts';
import type { Position } from './position.ts';
import { phrase } from '../../phrases/phrase.ts';

interface Placed extends Omit<NamedItem, 'shape'> {
  readonly shape: GeoShape;
}

/** Longer in degrees than any site is: a file that wide is laid flat where most of it is. */
const wide = 0.25;

/** A place to a tenth of a yard, so that a person can read it. */
const rounded = (degrees: number): number => Math.round(degrees * 1e6) / 1e6;

const middleOf = (values: readonly number[]): number => {
  const sorted = values.toSorted((a, b) => a - b);
  const [low = 0, high = 0] = [sorted[0], sorted.at(-1)];
  return rounded(
    high - low > wide ? (sorted[Math.floor(sorted.length / 2)] ?? 0) : (low + high) / 2,
  );
};

/** The middle of the most positions that lie together. */
const centreOf = (positions: readonly Position[]): Origin => {
  const all = positions.map(({ latitude: y, longitude: x }) => ({ x, y }));
  const most = together(all, wide);
  return {
    latitude: Math.max(-89, Math.min(89, middleOf(most.map(({ y }) => y)))),
    longitude: middleOf(most.map(({ x }) => x)),
  };
};

const drawnFrom = (
  { name, where, layer, height: told, limits, shape }: Placed,
  plane: LocalPlane,
): Parsed<Drawn> => {
  const points = shape.positions.map((position) => plane.toSite(position));
  const [at] = points;
  const base = { where, layer: layer ?? wholeFile } as const;
  if (shape.kind === 'point') {
    const { height } = shape.positions[0] ?? { height: null };
    if (at === undefined) return unread(phrase`expected a position`);
    if (layer === 'note' && name !== '') return read({ ...base, kind: 'text', name, at });
    const metres = height === null ? null : height * inchesIn.metres;
    const z = told ?? metres;
    return read({ ...base, kind: 'point', name, at, z: z === null ? null : inches(z) });
  }
  const closed = shape.kind !== 'line';
  const crossing = closed ? selfCrossing(points) : null;
  if (crossing !== null) {
    const { longitude, latitude } = plane.toEarth(crossing);
    return unread(phrase`crosses itself at ${rounded(longitude)}, ${rounded(latitude)}`);
  }
  const label = shape.kind === 'hole' && name !== '' ? phrase`${name}, hole` : name;
  const own = limits !== null && { limits };
  const path = { name: label, points, bows: points.map(() => 0), closed, ...own };
  return read({ ...base, kind: shape.kind === 'hole' ? 'hole' : 'path', path });
};

/** The line for a hole whose ring is refused. */
const ringless = phrase`is a hole in a ring that cannot be brought`;

const inThousand = (share: number): string =>
  phrase`${Math.max(0.001, Math.ceil(share * 1e6) / 1000).toFixed(3)} in 1,000`;

const placeText = ({ latitude, longitude }: PlaceOnEarth): string =>
  `${latitude.toFixed(6)}, ${longitude.toFixed(6)}`;

const isRaised = ({ kind, positions }: GeoShape): boolean =>
  kind !== 'point' && positions.some(({ height }) => (height ?? 0) !== 0);

/** What laying the ground flat does to it, as lines for a person. */
const flatText = (drawn: readonly Drawn[], origin: Origin, from: string): string[] => {
  const away = drawn
    .flatMap((one) => ('path' in one ? one.path.points : [one.at]))
    .map(({ x, y }) => Math.hypot(x, y))
    .reduce((most, one) => (one > farthest ? most : Math.max(most, one)), 0);
  const { share, north } = laidFlat(inches(away), origin.latitude);
  const higher = lengthenedBy(inches(12_000), inches(12_000)) / 12_000;
  return [
    phrase`Laid flat about latitude and longitude ${placeText(origin)}, ${from}`,
    phrase`Lengths are out by less than ${inThousand(share)}, north by up to ${toDegrees(radians(north)).toFixed(2)}°`,
    phrase`Lengths are those near sea level; ground 1,000 ft above it is ${inThousand(higher)} longer`,
  ];
};

const parsedJson = (text: string): Parsed<unknown> => {
  try {
    return read(JSON.parse(text.replace(/^\uFEFF/, '')));
  } catch {
    const end = text.trimEnd();
    return /[}\]]$/.test(end)
      ? unread(phrase`expected JSON, found ${quotedText(end)}`)
      : unread(
          phrase`ends too early: expected JSON, found ${quotedText(end.slice(-40))} at its end`,
        );
  }
};

const shapesIn = (items: readonly NamedItem[]): { shapes: Placed[]; refused: FoundRefusal[] } => ({
  shapes: items.flatMap(({ shape, ...item }) =>
    shape.ok ? [{ ...item, shape: shape.value }] : [],
  ),
  refused: items.flatMap(({ where, shape }) => (shape.ok ? [] : [{ where, reason: shape.reason }])),
});

/**
 * What the text of a GeoJSON file (RFC 7946) has, laid flat about `origin`, or about its own middle
 * where that is null. A ring or line that is at fault is refused by its place in the file, the others
 * can be brought. Unread with one line for what is no GeoJSON, has another reference system or nothing
 * that can be read.
 */
export const fromGeoJson = (text: string, origin: Origin | null): Parsed<Found> => {
  const json = parsedJson(text);
  if (!json.ok) return json;
  const features = geoFeatures(json.value);
  if (!features.ok) return features;
  const { shapes, refused } = shapesIn(features.value.items);
  const about = origin ?? centreOf(shapes.flatMap(({ shape }) => shape.positions));
  const plane = localPlane(about);
  const drawn: Drawn[] = [];
  const gone = new Set(refused.map(({ where }) => where));
  for (const placed of shapes) {
    const { where, shape } = placed;
    const one = gone.has(shape.inside ?? '') ? unread(ringless) : drawnFrom(placed, plane);
    if (one.ok) drawn.push(one.value);
    else refused.push({ where, reason: one.reason });
    if (!one.ok) gone.add(where);
  }
  const from =
    origin === null ? phrase`the middle of the file` : phrase`where 0, 0 of this yard is`;
  const { unplaced } = features.value;
  const told = [
    ...flatText(drawn, about, from),
    ...heightsLost(shapes.filter(({ shape }) => isRaised(shape)).length),
    ...(unplaced === 0 ? [] : [phrase`Left out, since they say no place: ${unplaced}`]),
  ];
  const none = phrase`expected parcels, lines or points, found none`;
  return foundFrom(drawn, { unit: 'feet', lines: 'apart', origin: about, told, refused, none });
};
