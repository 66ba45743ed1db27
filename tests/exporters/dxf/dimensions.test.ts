import DxfReader, { type IDimensionEntity } from 'dxf-parser';
import { parseString } from 'dxf';
import { describe, expect, it } from 'vitest';
import { dxfLayers } from '../../../src/exporters/dxf/dxfLayers.ts';
import { dxfLineTypes } from '../../../src/exporters/dxf/dxfLineTypes.ts';
import { drawPlan } from '../../../src/drawing/plan/drawPlan.ts';
import { openingText } from '../../../src/drawing/opening/openingText.ts';
import { toDxf } from '../../../src/exporters/dxf/toDxf.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { GateLayout } from '../../../src/engine/layout.ts';
import { distance } from '../../../src/geometry/distance.ts';
import type { SitePoint } from '../../../src/geometry/point.ts';
import { fromDxf } from '../../../src/importers/dxf/fromDxf.ts';
import { foundIn, pathsOf } from '../../importers/foundIn.ts';
import { samples } from '../samples.ts';

const metric = { system: 'mm', fraction: 16 } as const;
const [first] = samples;
if (first === undefined) throw new Error('expected a sample');
const metricSite = { ...first.site, lengths: metric };

/** Each sample, and the first with metric lengths. */
const yards = [
  ...samples.map((one) => ({ ...one, each: 1 })),
  { name: 'a metric yard', site: metricSite, layout: layOutSite(metricSite), each: 25.4 },
];

const nowhere = { x: NaN, y: NaN };

/** What a length of the layout may differ by in the file, inches. */
const hair = 0.01;

describe.each(yards)('the DXF of $name, by two readers that are not the writer', (yard) => {
  const { site, layout, each } = yard;
  const text = toDxf(site, layout);
  const dxf = new DxfReader().parseSync(text);
  if (dxf === null) throw new Error('expected a DXF');
  const other = parseString(text) as unknown as Other;
  const dimensions = dxf.entities.filter(
    ({ type }) => type === 'DIMENSION',
  ) as unknown as IDimensionEntity[];
  const inGround = ({ x = NaN, y = NaN }: Partial<SitePoint>): SitePoint => ({
    x: x / each,
    y: y / each,
  });

  it('[X62] says its unit, and what lengths are written in', () => {
    expect(dxf.header['$INSUNITS']).toBe(each === 1 ? 1 : 4);
    expect(dxf.header['$MEASUREMENT']).toBe(each === 1 ? 0 : 1);
    const { system } = site.lengths;
    expect(dxf.header['$LUNITS']).toBe(system === 'feet' ? 4 : system === 'decimal feet' ? 3 : 2);
    expect(other.header.insUnits).toBe(each === 1 ? 1 : 4);
  });

  it('[X62] both readers find the same posts and holes, each in its place and of its size', () => {
    const posts = [...layout.posts.values()];
    const circles = (layer: string) =>
      other.entities.filter((one) => one.type === 'CIRCLE' && one.layer === layer);
    const byFirst = (layer: string) =>
      dxf.entities.filter((one) => one.type === 'CIRCLE' && one.layer === layer) as unknown as {
        center: SitePoint;
        radius: number;
      }[];
    const dug = posts.filter(({ hole }) => hole.depth > 0);
    const due = [
      ['POSTS', posts.map(({ at, od }) => ({ at, size: od }))],
      ['HOLES', dug.map(({ at, hole }) => ({ at, size: hole.diameter }))],
    ] as const;
    for (const [layer, things] of due) {
      const [one, two] = [byFirst(layer), circles(layer)];
      expect([one.length, two.length]).toEqual([things.length, things.length]);
      things.forEach(({ at, size }, n) => {
        expect(distance(inGround(one[n]?.center ?? {}), at)).toBeLessThan(hair);
        expect(distance(inGround(two[n] ?? {}), at)).toBeLessThan(hair);
        expect((2 * (one[n]?.radius ?? NaN)) / each).toBeCloseTo(size, 6);
        expect((2 * (two[n]?.r ?? NaN)) / each).toBeCloseTo(size, 6);
      });
    }
  });

  it('[X63] has a dimension for every piece, stretch and total of every chain of the plan, as it is written there', () => {
    const chains = drawPlan(site, layout).filter((one) => one.kind === 'dimension chain');
    const due = chains.flatMap(({ points, texts, stretches, total }) => [
      ...texts.map((own, n) => ({ text: own.split('\n')[0], from: points[n], to: points[n + 1] })),
      ...(stretches ?? []).map(({ from, to, text: own }) => ({
        text: own.split('\n')[0],
        from: points[from],
        to: points[to],
      })),
      ...(total === null ? [] : [{ text: total, from: points[0], to: points.at(-1) }]),
    ]);
    expect(chains.length).toBeGreaterThan(0);
    for (const { text: own, from, to } of due) {
      const found = dimensions.filter(
        (one) =>
          distance(inGround(one.linearOrAngularPoint1), from ?? { x: NaN, y: NaN }) < hair &&
          distance(inGround(one.linearOrAngularPoint2), to ?? { x: NaN, y: NaN }) < hair &&
          one.text === own,
      );
      expect(found.length).toBeGreaterThan(0);
    }
    const gates = Object.values<GateLayout>(layout.gates).filter(({ placed }) => placed);
    expect(dimensions).toHaveLength(due.length + gates.length);
  });

  it('[X63] has every opening between the inside faces of its posts, as they stand', () => {
    for (const gate of Object.values<GateLayout>(layout.gates)) {
      if (!gate.placed) continue;
      const found = dimensions.filter(
        (one) =>
          Math.abs(one.actualMeasurement / each - gate.stands) < hair &&
          distance(
            inGround({
              x: (one.linearOrAngularPoint1.x + one.linearOrAngularPoint2.x) / 2,
              y: (one.linearOrAngularPoint1.y + one.linearOrAngularPoint2.y) / 2,
            }),
            gate.middle,
          ) < 1.5,
      );
      expect(found.map((one) => one.text)).toContain(openingText(gate.stands, site.lengths));
    }
  });

  it('[X63] both readers measure each dimension alike, and as it says', () => {
    const others = other.entities.filter(({ type }) => type === 'DIMENSION');
    expect(others).toHaveLength(dimensions.length);
    dimensions.forEach((one, n) => {
      const two = others[n];
      const apart = distance(one.linearOrAngularPoint1, one.linearOrAngularPoint2);
      expect(one.actualMeasurement / each).toBeCloseTo(apart / each, 6);
      expect(distance(two?.measureStart ?? nowhere, two?.measureEnd ?? nowhere)).toBeCloseTo(
        apart,
        6,
      );
      expect(one.layer).toBe('DIMENSIONS');
      expect(one.dimensionType & 7).toBe(1);
    });
  });

  it('[X63] has a block of its own for each dimension, with its text and its line on the right side', () => {
    const names = dimensions.map(({ block }) => block);
    expect(new Set(names).size).toBe(names.length);
    for (const one of dimensions) {
      const block = dxf.blocks[one.block];
      const texts = block?.entities.filter(({ type }) => type === 'TEXT') as unknown as {
        text: string;
      }[];
      expect(texts.map(({ text: own }) => own)).toEqual([one.text]);
      const lines = block?.entities.filter(({ type }) => type === 'LINE') ?? [];
      // two from the points out, two ticks, and the line itself
      expect(lines).toHaveLength(5);
    }
  });

  it('[X64] has every line type that a layer names, with dashes, and lettering of its style', () => {
    const types = dxf.tables.lineType.lineTypes;
    for (const [name, { dashes }] of Object.entries(dxfLineTypes)) {
      expect(types[name]?.pattern.map(Number)).toEqual([...dashes]);
    }
    for (const [name, { line }] of Object.entries(dxfLayers)) {
      expect(other.tables.layers[name]?.lineTypeName).toBe(line);
      if (line !== 'Continuous') expect(types[line]).toBeDefined();
    }
    const style = /\nDIMSTYLE\n(?:(?!\nDIMSTYLE\n)[^])*?\n2\nLATHLINE\n[^]*?\n140\n([^\n]+)\n/.exec(
      text,
    );
    const lettered = Object.values(dxf.blocks)
      .filter(({ name }) => name.startsWith('*D'))
      .flatMap(({ entities }) => entities.filter(({ type }) => type === 'TEXT'));
    const [{ textHeight: height = NaN } = {}] = lettered as unknown as { textHeight?: number }[];
    expect(Number(style?.[1])).toBeCloseTo(height, 6);
  });

  it('[X62] comes back by our own reader in its unit, as long as it was', () => {
    const found = foundIn(fromDxf(text, { chosen: null, usual: 'feet' }));
    expect(found.told[0]).toBe(
      `Read in ${each === 1 ? 'inches' : 'millimetres'}, as the file says`,
    );
    expect(found.told.join('\n')).toContain(`${dimensions.length} DIMENSION`);
    const lines = pathsOf(found, 'FENCE-LINE › lines').concat(pathsOf(found, 'FENCE-LINE › areas'));
    const ends = lines.flatMap(({ points }) => points);
    for (const { legs } of Object.values(layout.lines)) {
      for (const { start } of legs) {
        expect(Math.min(...ends.map((one) => distance(one, start)))).toBeLessThan(hair);
      }
    }
  });
});

interface Other {
  readonly header: { readonly insUnits?: number };
  readonly tables: {
    readonly layers: Readonly<Record<string, { readonly lineTypeName?: string }>>;
  };
  readonly entities: readonly {
    readonly type: string;
    readonly layer?: string;
    readonly x?: number;
    readonly y?: number;
    readonly r?: number;
    readonly measureStart?: SitePoint;
    readonly measureEnd?: SitePoint;
  }[];
}
