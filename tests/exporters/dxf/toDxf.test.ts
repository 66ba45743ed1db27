import DxfReader, {
  type IArcEntity,
  type ICircleEntity,
  type ILwpolylineEntity,
  type IMtextEntity,
} from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { usualSpec } from '../../../src/engine/usualSpec.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { GateLayout, LineLayout } from '../../../src/engine/layout.ts';
import { distance } from '../../../src/geometry/distance.ts';
import { trackAt, trackLength } from '../../../src/geometry/track.ts';
import { dxfLayerNames } from '../../../src/exporters/dxf/dxfLayers.ts';
import { toDxf } from '../../../src/exporters/dxf/toDxf.ts';
import { fromDxf } from '../../../src/importers/dxf/fromDxf.ts';
import { usualBecomes } from '../../../src/importers/usualBecomes.ts';
import { bringIn } from '../../../src/site/edits/bringIn.ts';
import { emptySite } from '../../../src/site/emptySite.ts';
import type { Feature } from '../../../src/site/feature.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { foundIn, pathsOf } from '../../importers/foundIn.ts';
import { samplePlans } from '../../store/samplePlans.ts';
import { samples } from '../samples.ts';

/** Another reader of the format, by other authors than the writer. */
const readBack = (text: string) => {
  const dxf = new DxfReader().parseSync(text);
  if (dxf === null) throw new Error('expected a DXF');
  const on = <T>(layer: string, type: string): T[] =>
    dxf.entities.filter((one) => one.layer === layer && one.type === type) as unknown as T[];
  return { dxf, on };
};

/** The length along a polyline by its bulges: r times the angle, the angle four times their arctangent. */
const lengthOf = ({ vertices, shape }: ILwpolylineEntity): number =>
  vertices.slice(0, shape ? undefined : -1).reduce((sum, from, n) => {
    const to = vertices[(n + 1) % vertices.length] ?? from;
    const chord = distance(from, to);
    const angle = 4 * Math.atan(Math.abs(from.bulge ?? 0));
    return sum + (angle === 0 ? chord : (chord / (2 * Math.sin(angle / 2))) * angle);
  }, 0);

describe.each(samples)('the DXF of $name, read back by another reader', ({ site, layout }) => {
  const text = toDxf(site, layout);
  const { dxf, on } = readBack(text);

  it('[X9] is in inches where its lengths are in feet, on layers that it names', () => {
    expect(dxf.header['$INSUNITS']).toBe(1);
    const layers = Object.keys(dxf.tables.layer.layers);
    expect(layers).toEqual(expect.arrayContaining([...dxfLayerNames]));
    expect(dxf.entities.filter(({ layer }) => !layers.includes(layer))).toEqual([]);
  });

  it('[X9] has every post at its actual outside diameter and its place, with its tag', () => {
    const circles = on<ICircleEntity>('POSTS', 'CIRCLE');
    const posts = [...layout.posts.values()];
    expect(circles).toHaveLength(posts.length);
    posts.forEach(({ at, od }) => {
      const found = circles.find(({ center }) => distance(center, at) < 1e-6);
      expect(found?.radius).toBeCloseTo(od / 2, 9);
    });
    const tags = on<IMtextEntity>('POST-TAGS', 'MTEXT').map((one) => one.text);
    expect(tags.toSorted()).toEqual(posts.map(({ tag }) => tag).toSorted());
  });

  it('[X9] has every fence line as long as it is, curves as arcs', () => {
    const lines = on<ILwpolylineEntity>('FENCE-LINE', 'LWPOLYLINE').map(lengthOf);
    const due = Object.values(layout.lines).map(({ legs }) =>
      legs.reduce((sum, leg) => sum + trackLength(leg), 0),
    );
    expect(lines).toHaveLength(due.length);
    due.forEach((length, n) => expect(lines[n]).toBeCloseTo(length, 6));
  });

  it('[X9] has every curve on the side that it is on', () => {
    const lines = on<ILwpolylineEntity>('FENCE-LINE', 'LWPOLYLINE');
    Object.values(layout.lines).forEach(({ legs }, n) => {
      legs.forEach((leg, k) => {
        const [from, to] = [leg.start, leg.end];
        const bulge = lines[n]?.vertices[k]?.bulge ?? 0;
        // the sagitta is the bulge times half the chord; above 0 the arc runs counter-clockwise, so
        // that it lies to the right of the way from its start to its end (public DXF reference)
        const right = { x: (to.y - from.y) / 2, y: (from.x - to.x) / 2 };
        const middle = {
          x: (from.x + to.x) / 2 + bulge * right.x,
          y: (from.y + to.y) / 2 + bulge * right.y,
        };
        expect(distance(middle, trackAt(leg, trackLength(leg) / 2))).toBeLessThan(1e-6);
      });
    });
  });

  it('[X9] has the way that the leaves of every gate swing', () => {
    const leaves = Object.values<GateLayout>(layout.gates).flatMap((gate) =>
      gate.placed ? gate.leaves : [],
    );
    const arcs = on<IArcEntity>('GATE-SWINGS', 'ARC');
    expect(arcs).toHaveLength(leaves.length);
    leaves.forEach(({ hinge, hung, width, turns, closed }) => {
      const arc = arcs.find(({ center }) => distance(center, hinge) < 1e-6);
      if (arc === undefined) throw new Error('expected an arc about the hinge');
      expect(arc.radius).toBeCloseTo(hung + width, 9);
      const turn = 2 * Math.PI;
      const sweep = (arc.endAngle - arc.startAngle + 2 * turn) % turn;
      expect(sweep).toBeCloseTo(Math.abs(turns), 6);
      const shut = turns < 0 ? arc.endAngle : arc.startAngle;
      expect(Math.cos(shut - closed)).toBeCloseTo(1, 9);
    });
  });

  it('[X9] has every feature with sides, and comes back by our own reader as it was', () => {
    const features = Object.values<Feature>(site.features).filter((one) => 'path' in one);
    const found = foundIn(fromDxf(text, { chosen: null, usual: 'feet' }));
    expect(found.told[0]).toBe('Read in inches, as the file says');
    expect(found.refused).toEqual([]);
    const buildings = features.filter(({ kind }) => kind === 'building');
    expect(pathsOf(found, 'BUILDING › areas')).toHaveLength(buildings.length);
    const back = pathsOf(found, 'BUILDING › areas').flatMap(({ points }) => points);
    const due = buildings.flatMap((one) =>
      'path' in one ? Object.values(one.path).map(({ mark }) => site.marks[mark]) : [],
    );
    expect(back).toHaveLength(due.length);
    due.forEach((mark) => {
      const at = mark ?? { x: NaN, y: NaN };
      expect(Math.min(...back.map((one) => distance(one, at)))).toBeLessThan(1e-6);
    });
  });

  it('[X9] comes onto a new site with its fence lines and what has sides', () => {
    const found = foundIn(fromDxf(text, { chosen: null, usual: 'feet' }));
    const becomes = Object.fromEntries(found.groups.map((one) => [one.key, usualBecomes(one)]));
    const utility = { width: inches(2), tolerance: inches(24) };
    const bare = emptySite({ specs: {}, hardware: {} });
    const fence = usualSpec(inches(48));
    const { heights } = samplePlans;
    const back = bringIn(bare, found, { becomes, fence, utility, heights, chord: inches(1) });
    const kindsIn = ({ features: own }: Site) =>
      Object.values<Feature>(own)
        .flatMap((one) => ('path' in one ? [one.kind] : []))
        .toSorted();
    // a DXF says nothing of builds: lines that go on from one another's ends come as one
    const along = (one: Site) =>
      Object.values<LineLayout>(layOutSite(one).lines).reduce((sum, { length }) => sum + length, 0);
    expect(along(back)).toBeCloseTo(along(site), 3);
    expect(Object.keys(back.lines).length).toBeLessThanOrEqual(Object.keys(site.lines).length);
    expect(kindsIn(back)).toEqual(kindsIn(site));
  });

  it('[X9] is the same bytes again', () => {
    expect(toDxf(site, layout)).toBe(text);
  });
});

it('[X9] no text of a site breaks the file', () => {
  const [sample] = samples;
  if (sample === undefined) throw new Error('expected a sample');
  const bad = '0\nENDSEC\r\n0\nEOF\n\u2028{\\fArial;} 5%%d 100%%%c %%065 90° ±1 ⌀2 \\P';
  const features = Object.fromEntries(
    Object.entries<Feature>(sample.site.features).map(([id, one]) => [id, { ...one, label: bad }]),
  ) as Site['features'];
  const { dxf, on } = readBack(toDxf({ ...sample.site, features }, sample.layout));
  expect(dxf.entities.length).toBeGreaterThan(10);
  const [text] = on<IMtextEntity>('BUILDING', 'MTEXT');
  expect(text?.text).toContain('ENDSEC\\P');
  const found = foundIn(
    fromDxf(toDxf({ ...sample.site, features }, sample.layout), { chosen: null, usual: 'feet' }),
  );
  const group = found.groups.find(({ key }) => key === 'BUILDING › texts');
  expect(group !== undefined && 'points' in group ? group.points[0]?.name : '').toContain(
    '{\\fArial;} 5%%d 100%%%c %%065 90° ±1 ⌀2 \\P',
  );
});

it('[X9] a sample has a curve', () => {
  const bows = samples.flatMap(({ layout }) =>
    Object.values(layout.lines).flatMap(({ legs }) => legs.map(({ bow }) => bow)),
  );
  expect(bows.some((bow) => bow !== 0)).toBe(true);
});
