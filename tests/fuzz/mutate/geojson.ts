import type { Random } from '../random.ts';
import type { TextMutation } from './mutation.ts';

const feature = (geometry: string, properties = 'null'): string =>
  `{"type":"FeatureCollection","features":[{"type":"Feature","properties":${properties},"geometry":${geometry}}]}`;

const nested = (depth: number): string =>
  `${'{"type":"GeometryCollection","geometries":['.repeat(depth)}{"type":"Point","coordinates":[0,0]}${']}'.repeat(depth)}`;

const ring = (count: number, random: Random): string => {
  const places = Array.from({ length: count }, () =>
    [random.below(1000) / 1e6, random.below(1000) / 1e6].join(','),
  );
  return [...places, places[0] ?? ''].map((place) => `[${place}]`).join(',');
};

const star = (count: number): string => {
  const places = Array.from({ length: count }, (_, n) => {
    const [angle, out] = [(2 * Math.PI * n) / count, n % 2 === 0 ? 1 : 0.1];
    return [out * Math.cos(angle) * 0.01, out * Math.sin(angle) * 0.01].join(',');
  });
  return [...places, places[0] ?? ''].map((place) => `[${place}]`).join(',');
};

const made: readonly ((random: Random) => string)[] = [
  (random) => feature(nested(random.pick([2, 8, 9, 3000]))),
  (random) =>
    feature(
      `{"type":"Polygon","coordinates":${'['.repeat(random.pick([1, 2, 4, 50_000]))}`.padEnd(
        200_000,
        ' ',
      ),
    ),
  (random) => {
    const depth = random.pick([3, 5, 20_000]);
    return feature(`{"type":"Point","coordinates":${'['.repeat(depth)}${']'.repeat(depth)}}`);
  },
  (random) =>
    feature(`{"type":"Polygon","coordinates":[[${ring(random.pick([3, 40, 4000]), random)}]]}`),
  (random) =>
    feature(`{"type":"Polygon","coordinates":[[${star(random.pick([10, 400, 12_000]))}]]}`),
  (random) => {
    const one = `[[${ring(3, random)}]]`;
    const count = random.pick([2, 300, 4000]);
    return feature(
      `{"type":"MultiPolygon","coordinates":[${Array.from({ length: count }, () => one).join()}]}`,
    );
  },
  (random) => {
    const far = random.pick(['180,90', '-180,-90', '0,90', '179.9999999,0', '181,0', '0,-90.5']);
    return feature(`{"type":"LineString","coordinates":[[${far}],[-179.9999999,0],[${far}]]}`);
  },
];

const stays: TextMutation = (text, random) => {
  const spots = [...text.matchAll(/\](?=\s*\])/g)];
  if (spots.length === 0) return text;
  const { index } = random.pick(spots);
  return `${text.slice(0, index)},${random.pick(['0', '"x"', 'null', '[]', '1e400'])}${text.slice(index)}`;
};

/** Spoils a GeoJSON: positions with more in them, or one made of what readers stumble over. */
export const geoJsonMutation: TextMutation = (text, random) =>
  random.chance(0.3) ? random.pick(made)(random) : stays(text, random);
