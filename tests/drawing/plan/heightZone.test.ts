import { describe, expect, it } from 'vitest';
import { legend } from '../../../src/drawing/sheet/plan/legend.ts';
import { drawFeature } from '../../../src/drawing/plan/drawFeature.ts';
import { drawPlan } from '../../../src/drawing/plan/drawPlan.ts';
import { heightSpans } from '../../../src/drawing/tape/heightSpans.ts';
import { tapeStrip } from '../../../src/drawing/tape/tapeStrip.ts';
import { wholeRun } from '../../../src/drawing/tape/tapePiece.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import type { Feature } from '../../../src/site/feature.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence, spec } from '../../engine/plainYard.ts';
import { textsOf } from '../textsOf.ts';

const corners = [
  { x: 100, y: 0 },
  { x: 400, y: 0 },
  { x: 100, y: 300 },
];

const line = fence(bare, [
  [0, 60],
  [600, 60],
]);

const zoned = (site: Site, label = '', open = 30): Site =>
  addFeature(
    site,
    { kind: 'height zone', of: 'sight triangle', label, solid: inches(30), open: inches(open) },
    corners,
  );

const drawn = (site: Site) =>
  Object.values<Feature>(site.features).flatMap((feature) => drawFeature(feature, site));

const namesOf = (site: Site): string[] =>
  drawn(site).flatMap((one) => (one.kind === 'text' ? [one.text] : []));

describe('ground with a height limit on the drawing', () => {
  it('[D94] is told from every other ground without colour, by its hatching and by its edge', () => {
    const kinds = ['building', 'paving', 'pool', 'keep-out'] as const;
    const others = kinds.flatMap((kind) => drawn(addFeature(line, { kind, label: '' }, corners)));
    const [ground, edge] = drawn(zoned(line));
    expect(ground).toMatchObject({ kind: 'area', hatch: 'level' });
    expect(others.some((one) => one.kind === 'area' && one.hatch === 'level')).toBe(false);
    expect(edge).toMatchObject({ kind: 'polyline', closed: true, pen: 'height zone' });
    expect(drawPlan(zoned(line), layOutSite(zoned(line)))).toContainEqual(edge);
  });

  it('[D94] says its limits in words, both where they differ', () => {
    expect(namesOf(zoned(line))).toEqual([`sight triangle\nno higher than 2'-6"`]);
    expect(namesOf(zoned(line, 'At Elm', 42))).toEqual([
      `At Elm\nno higher than 2'-6", open fence 3'-6"`,
    ]);
  });

  it('[D94] the key names it where there is one, and only there', () => {
    const key = (site: Site) =>
      textsOf(legend(site, layOutSite(site), 9, null).atoms).map(({ text }) => text);
    const text = 'sight triangle: fence no higher than written';
    expect(key(zoned(line))).toContain(text);
    expect(key(line)).not.toContain(text);
  });

  it('[D94] the tape of a fence through it is hatched from where to where, under the limit of its build', () => {
    // at y 60 the slope of the triangle is at x 340
    const site = zoned(line, '', 42);
    const layout = layOutSite(site);
    const [run] = layout.lines['line:1']?.runs ?? [];
    if (run === undefined) throw new Error('expected a run');
    const [span] = heightSpans(run, site);
    expect(span).toMatchObject({ name: `UP TO 3'-6" HIGH`, hatch: 'level' });
    expect([span?.from, span?.to]).toEqual([100, 340].map((at) => expect.closeTo(at, 6)));
    const closed = { ...site, specs: { 'spec:six': { ...spec, solid: 0.8 } } } as Site;
    expect(heightSpans(run, closed)[0]?.name).toBe(`UP TO 2'-6" HIGH`);
    const style = { system: 'feet', fraction: 8 } as const;
    const strip = tapeStrip(site, layout, [wholeRun(run, 'start')], { width: 10, style });
    expect(strip.closed.map(({ name }) => name)).toEqual([`UP TO 3'-6" HIGH`]);
  });
});
