import { pathPoints } from '../../drawing/plan/pathPoints.ts';
import type { GateLayout, Layout, LineLayout } from '../../engine/layout.ts';
import { localPlane } from '../../geometry/localPlane.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { signedArea } from '../../geometry/signedArea.ts';
import { trackPoints } from '../../geometry/track.ts';
import type { Feature } from '../../site/feature.ts';
import type { Mark } from '../../site/mark.ts';
import { isClosed } from '../../site/pathFeature.ts';
import type { Shot } from '../../site/shot.ts';
import type { Site } from '../../site/site.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Pieces of a curve lie no farther than this inside it, inches. */
const off = 1 / 4;

type Properties = Readonly<Record<string, string | number>>;

/** One thing on the ground, inches, and what is said of it. */
interface Thing {
  readonly type: 'Point' | 'LineString' | 'Polygon';
  readonly points: readonly SitePoint[];
  readonly properties: Properties;
}

const point = (at: SitePoint, properties: Properties): Thing => ({
  type: 'Point',
  points: [at],
  properties,
});

const lineThing = ({ id, legs, length }: LineLayout, site: Site): Thing => {
  const points = legs.flatMap((leg, n) => trackPoints(leg, off).slice(n === 0 ? 0 : 1));
  const line = site.lines[id];
  const spec = line === undefined ? '' : (site.specs[line.spec]?.label ?? '');
  const properties = { kind: 'fence line', name: line?.label ?? '', spec, length_in: length };
  return { type: 'LineString', points, properties };
};

const gateThing = ({ id, start, end, opening }: GateLayout, site: Site): Thing => ({
  type: 'LineString',
  points: [start, end],
  properties: { kind: 'gate', name: site.gates[id]?.label ?? '', opening_in: opening.target },
});

/** What a feature tells beside its kind and name: which service it is, or how high fence may stand in it. */
const toldOf = (feature: Feature): Properties => {
  if (feature.kind === 'utility') return { service: feature.service };
  if (feature.kind !== 'height zone') return {};
  return { of: feature.of, solid_in: feature.solid, open_in: feature.open };
};

const featureThing = (feature: Feature, site: Site): Thing[] => {
  const { kind, label: name } = feature;
  if ('path' in feature) {
    const points = pathPoints(site, feature.path);
    const closed = isClosed(feature);
    const type = closed ? 'Polygon' : 'LineString';
    return points.length < (closed ? 3 : 2)
      ? []
      : [{ type, points, properties: { kind, name, ...toldOf(feature) } }];
  }
  const at = site.marks[feature.mark];
  if (at === undefined) return [];
  return [point(at, { kind, name: feature.kind === 'note' ? feature.text || name : name })];
};

const thingsOf = (site: Site, { lines, posts, gates }: Layout): Thing[] => [
  ...Object.values<LineLayout>(lines)
    .filter(({ legs }) => legs.length > 0)
    .map((line) => lineThing(line, site)),
  ...[...posts.values()].map(({ at, tag, kind, od, pipe }) =>
    point(at, { kind: 'post', name: tag, post: kind, od_in: od, pipe }),
  ),
  ...Object.values<GateLayout>(gates)
    .filter(({ placed }) => placed)
    .map((gate) => gateThing(gate, site)),
  ...Object.values<Feature>(site.features).flatMap((feature) => featureThing(feature, site)),
  ...Object.values<Mark>(site.marks)
    .filter(({ label }) => label.trim() !== '')
    .map((mark) => point(mark, { kind: 'mark', name: mark.label })),
  ...Object.values<Shot>(site.shots).map((shot) =>
    point(shot, { kind: 'grade shot', name: shot.label, height_in: shot.z }),
  ),
];

/** Degrees to a billionth, a tenth of a millimetre. */
const rounded = (degrees: number): number => Number(degrees.toFixed(9));

/** The rim of an area runs counter-clockwise and ends where it begins (RFC 7946, 3.1.6). */
const ringOf = (points: readonly SitePoint[]): readonly SitePoint[] => {
  const left = signedArea(points) < 0 ? points.toReversed() : points;
  return [...left, ...left.slice(0, 1)];
};

/**
 * A site as GeoJSON (RFC 7946): fence lines and gates as lines, posts, named marks and grade shots as
 * points, closed features as polygons; curves in straight pieces within 1/4 in. Lengths that properties
 * tell are inches, as their names say. Heights are told there and not in the positions, since a site does not know
 * its height above the ellipsoid. Unread with one line for a site that does not know where on earth it is.
 */
export const toGeoJson = (site: Site, layout: Layout): Parsed<string> => {
  if (site.origin === null) {
    return unread(
      phrase`this yard does not know where on earth it is: bring in a GeoJSON, or find a mark by satellites, first`,
    );
  }
  const plane = localPlane(site.origin);
  const position = (at: SitePoint): [number, number] => {
    const { latitude, longitude } = plane.toEarth(at);
    return [rounded(longitude), rounded(latitude)];
  };
  const features = thingsOf(site, layout).map(({ type, points, properties }) => {
    const positions = (type === 'Polygon' ? ringOf(points) : points).map(position);
    const coordinates = { Point: positions[0], LineString: positions, Polygon: [positions] }[type];
    return { type: 'Feature', properties, geometry: { type, coordinates } };
  });
  return read(`${JSON.stringify({ type: 'FeatureCollection', features }, null, 1)}\n`);
};
