import { check } from '@placemarkio/check-geojson';
import geodesic from 'geographiclib-geodesic';
import { describe, expect, it } from 'vitest';
import { usualSpec } from '../../../src/engine/usualSpec.ts';
import { distance } from '../../../src/geometry/distance.ts';
import { toGeoJson } from '../../../src/exporters/geojson/toGeoJson.ts';
import { fromGeoJson } from '../../../src/importers/geojson/fromGeoJson.ts';
import { usualBecomes } from '../../../src/importers/usualBecomes.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { bringIn } from '../../../src/site/edits/bringIn.ts';
import { emptySite } from '../../../src/site/emptySite.ts';
import type { Feature } from '../../../src/site/feature.ts';
import type { Shot } from '../../../src/site/shot.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { foundIn, pathsOf } from '../../importers/foundIn.ts';
import { samplePlans } from '../../store/samplePlans.ts';
import { samples } from '../samples.ts';

const origin = { latitude: 41.25, longitude: -96 };

interface Collection {
  readonly features: readonly {
    readonly properties: Readonly<Record<string, string | number>>;
    readonly geometry: { readonly type: string; readonly coordinates: unknown };
  }[];
}

describe.each(samples)('the GeoJSON of $name', ({ site, layout }) => {
  const text = toGeoJson({ ...site, origin }, layout);
  if (!text.ok) throw new Error(text.reason);
  const { features } = check(text.value) as unknown as Collection;

  it('[X10] is one by another library’s account, with rims that run counter-clockwise', () => {
    for (const { geometry } of features) {
      if (geometry.type !== 'Polygon') continue;
      const [ring = []] = geometry.coordinates as (readonly [number, number])[][];
      const area = ring
        .slice(1)
        .reduce((sum, [x, y], n) => sum + ((ring[n]?.[0] ?? 0) * y - x * (ring[n]?.[1] ?? 0)), 0);
      expect(area).toBeGreaterThan(0);
    }
    expect(features.filter(({ properties }) => properties['kind'] === 'post')).toHaveLength(
      layout.posts.size,
    );
  });

  it('[X10] posts are as far apart as geodesics on the ellipsoid are long', () => {
    const places = new Map(
      features
        .filter(({ properties }) => properties['kind'] === 'post')
        .map(({ properties, geometry }) => [
          properties['name'],
          geometry.coordinates as [number, number],
        ]),
    );
    const posts = [...layout.posts.values()];
    posts.slice(1).forEach((post, n) => {
      const before = posts[n] ?? post;
      const [from, to] = [places.get(before.tag), places.get(post.tag)];
      if (from === undefined || to === undefined) throw new Error('expected both posts');
      const metres = geodesic.Geodesic.WGS84.Inverse(from[1], from[0], to[1], to[0]).s12 ?? NaN;
      // positions are rounded to a tenth of a millimetre
      expect(Math.abs(metres / 0.0254 - distance(before.at, post.at))).toBeLessThan(0.02);
    });
  });

  it('[X10] comes back onto the site where it was', () => {
    const found = foundIn(fromGeoJson(text.value, origin));
    expect(found.refused).toEqual([]);
    const corners = Object.values(site.features).flatMap((one) =>
      one.kind === 'building' ? Object.values(one.path).map(({ mark }) => site.marks[mark]) : [],
    );
    const back = pathsOf(found, 'building › areas').flatMap(({ points }) => points);
    corners.forEach((mark) => {
      const at = mark ?? { x: NaN, y: NaN };
      expect(Math.min(...back.map((one) => distance(one, at)))).toBeLessThan(0.01);
    });
  });

  it('[I22] its lines, grounds and heights come back as what they were', () => {
    const found = foundIn(fromGeoJson(text.value, origin));
    const becomes = Object.fromEntries(found.groups.map((one) => [one.key, usualBecomes(one)]));
    const fence = usualSpec(inches(48));
    const utility = { width: inches(2), tolerance: inches(24) };
    const bare = emptySite({ specs: {}, hardware: {} });
    const { heights } = samplePlans;
    const back = bringIn(bare, found, { becomes, fence, utility, heights, chord: inches(1) });
    const kindsIn = ({ features: own }: Site) =>
      Object.values<Feature>(own)
        .flatMap((one) => ('path' in one || one.kind === 'note' ? [one.kind] : []))
        .toSorted();
    expect(Object.keys(back.lines)).toHaveLength(Object.keys(site.lines).length);
    expect(kindsIn(back)).toEqual(kindsIn(site));
    const heightsIn = ({ shots }: Site) =>
      Object.values<Shot>(shots)
        .map(({ z }) => z)
        .toSorted((a, b) => a - b);
    expect(heightsIn(back)).toEqual(heightsIn(site));
  });
});

it('[X10] ground with a height limit comes back with its limits, and with the planned ones where a file tells none', () => {
  const zone = (of: 'sight triangle' | 'front yard', solid: number) =>
    ({ kind: 'height zone', label: of, of, solid: inches(solid), open: inches(50) }) as const;
  const corners = [
    { x: 0, y: 0 },
    { x: 300, y: 0 },
    { x: 0, y: 300 },
  ];
  const bare = emptySite({ specs: {}, hardware: {} });
  const site = (['sight triangle', 'front yard'] as const).reduce<Site>(
    (so, of, n) => addFeature(so, zone(of, 31 + n), corners),
    { ...bare, origin },
  );
  const written = toGeoJson(site, layOutSite(site));
  if (!written.ok) throw new Error(written.reason);
  const { heights } = samplePlans;
  const backFrom = (text: string) => {
    const found = foundIn(fromGeoJson(text, origin));
    const becomes = Object.fromEntries(found.groups.map((one) => [one.key, usualBecomes(one)]));
    const utility = { width: inches(2), tolerance: inches(24) };
    const chosen = { becomes, fence: null, utility, heights, chord: inches(1) };
    return Object.values(bringIn(bare, found, chosen).features).toSorted((a, b) =>
      a.label.localeCompare(b.label),
    );
  };
  expect(backFrom(written.value)).toMatchObject([
    zone('front yard', 32),
    zone('sight triangle', 31),
  ]);
  const untold = written.value.replaceAll('"solid_in": 31', '"solid_in": "31"');
  expect(backFrom(untold)[1]).toMatchObject({ of: 'sight triangle', ...heights['sight triangle'] });
});

it('[X10] a yard that does not know where on earth it is says so, and how it comes to know', () => {
  const [sample] = samples;
  if (sample === undefined) throw new Error('expected a sample');
  expect(toGeoJson({ ...sample.site, origin: null }, sample.layout)).toEqual({
    ok: false,
    reason:
      'this yard does not know where on earth it is: bring in a GeoJSON, or find a mark by satellites, first',
  });
});
