import { describe, expect, it } from 'vitest';
import { parseString } from 'dxf';
import DxfReader from 'dxf-parser';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { toDxf } from '../../../src/exporters/dxf/toDxf.ts';
import type { LengthSystem } from '../../../src/units/lengthStyle.ts';
import { samples } from '../samples.ts';

/** A tag of a DXF: a group code and what it holds. */
type Tag = readonly [code: number, value: string];

/** A DXF as its tags, two lines each (public DXF reference). */
const tagsOf = (text: string): Tag[] => {
  const lines = text.split('\n');
  return Array.from({ length: Math.floor(lines.length / 2) }, (_, n): Tag => [
    Number(lines[2 * n]),
    (lines[2 * n + 1] ?? '').trim(),
  ]);
};

/** The tags of each record of a sort, each without the tag that begins it. */
const recordsOf = (tags: readonly Tag[], sort: string): Tag[][] =>
  tags.flatMap(([code, value], n): Tag[][] => {
    if (code !== 0 || value !== sort) return [];
    const end = tags.findIndex(([next], k) => k > n && next === 0);
    return [tags.slice(n + 1, end)];
  });

const only = (record: readonly Tag[], code: number): string[] =>
  record.flatMap(([own, value]) => (own === code ? [value] : []));

const [sample] = samples;
if (sample === undefined) throw new Error('expected a sample');

describe('the line types of a DXF, by its tags', () => {
  const tags = tagsOf(toDxf(sample.site, sample.layout));
  const types = recordsOf(tags, 'LTYPE');
  const named = (name: string): Tag[] => types.find((one) => only(one, 2)[0] === name) ?? [];

  it.each([
    ['FENCE', 'x'],
    ['FENCE-BOARDS', '||'],
    ['FENCE-PANELS', '[]'],
  ])('[X72] %s has “%s” between its dashes, in a style that the file has', (name, text) => {
    const record = named(name);
    // from the first length on, an element is its length, what it is, then what it has
    const pattern = record.slice(record.findIndex(([code]) => code === 49));
    expect(pattern.map(([code]) => code)).toEqual([49, 74, 49, 74, 75, 340, 46, 50, 44, 45, 9]);
    expect(only(record, 9)).toEqual([text]);
    // 2 is embedded text, and text has no number of a shape (public DXF reference)
    expect([only(record, 74), only(record, 75)]).toEqual([['0', '2'], ['0']]);
    const styles = recordsOf(tags, 'STYLE').flatMap((style) => only(style, 5));
    expect(styles).toContain(only(record, 340)[0]);
    const [dash = NaN, gap = NaN] = only(record, 49).map(Number);
    expect(Number(only(record, 73)[0])).toBe(2);
    expect(Number(only(record, 40)[0])).toBeCloseTo(dash - gap, 9);
    // letters begin in the gap, and are no higher than it is wide
    const [height, along] = [Number(only(record, 46)[0]), Number(only(record, 44)[0])];
    expect(along).toBeGreaterThan(gap);
    expect(along).toBeLessThan(0);
    expect(height).toBeLessThan(-gap);
  });

  it('[X72] lines without a sign have dashes alone', () => {
    const utility = named('UTILITY');
    expect(only(utility, 49).map(Number)).toEqual([0.2, -0.06]);
    expect(only(utility, 74)).toEqual(['0', '0']);
    expect(only(utility, 9)).toEqual([]);
  });

  it('[X72] what boards and panels hang on has their signs', () => {
    const fences = samples.find(({ name }) => name === 'three-fences');
    if (fences === undefined) throw new Error('expected a sample');
    const bays = recordsOf(tagsOf(toDxf(fences.site, fences.layout)), 'LWPOLYLINE').filter(
      (one) => only(one, 8)[0] === 'FENCE-BAYS',
    );
    expect(new Set(bays.flatMap((one) => only(one, 6)))).toEqual(
      new Set(['FENCE', 'FENCE-BOARDS', 'FENCE-PANELS']),
    );
  });
});

describe('the units of a DXF, by two readers', () => {
  // 1 inches and 4 millimetres; 0 imperial and 1 metric hatches and line types (public DXF reference)
  it.each([
    ['feet', 1, 0],
    ['inches', 1, 0],
    ['decimal feet', 1, 0],
    ['mm', 4, 1],
    ['m', 4, 1],
  ] as const satisfies readonly (readonly [LengthSystem, number, number])[])(
    '[X74] every sample with its lengths in %s says $INSUNITS %i and $MEASUREMENT %i',
    (system, units, measurement) => {
      for (const { site: own } of samples) {
        const site = { ...own, lengths: { system, fraction: 16 } as const };
        const text = toDxf(site, layOutSite(site));
        const { header = {} } = new DxfReader().parseSync(text) ?? {};
        expect([header['$INSUNITS'], header['$MEASUREMENT']]).toEqual([units, measurement]);
        const other = parseString(text) as unknown as {
          readonly header: Readonly<Record<string, unknown>>;
        };
        expect([other.header['insUnits'], other.header['measurement']]).toEqual([
          units,
          measurement,
        ]);
      }
    },
  );
});
