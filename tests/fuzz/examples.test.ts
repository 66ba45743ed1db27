import { deflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { arcPoints } from '../../src/geometry/arcPoints.ts';
import { bowed } from '../../src/geometry/bowed.ts';
import type { SitePoint } from '../../src/geometry/point.ts';
import { fromDxf } from '../../src/importers/dxf/fromDxf.ts';
import { siteInPdf } from '../../src/importers/pdf/siteInPdf.ts';
import { fromGeoJson } from '../../src/importers/geojson/fromGeoJson.ts';
import { bringIn } from '../../src/site/edits/bringIn.ts';
import { openSite } from '../../src/site/openSite.ts';
import { pointsFromCsv } from '../../src/importers/csv/pointsFromCsv.ts';
import { readCalls } from '../../src/engine/calls/readCalls.ts';
import { bookFromCsv } from '../../src/importers/book/bookFromCsv.ts';
import { pricesFromCsv } from '../../src/importers/csv/pricesFromCsv.ts';
import { emptySite } from '../../src/site/emptySite.ts';
import { straightened } from '../../src/site/straightened.ts';
import { usualHeights } from '../../src/trade/usualHeights.ts';
import { inches } from '../../src/units/inches.ts';
import { quotedText } from '../../src/units/quotedText.ts';
import { block, dxfText, entity, line } from '../importers/dxf/dxfText.ts';
import { foundIn, reasonOf } from '../importers/foundIn.ts';
import { oneBlock, packed } from './mutate/deflated.ts';
import { carried, carrying, madePdf } from './mutate/madePdf.ts';

// small files of the sorts that spoilt ones were found by `npm run fuzz` to throw, hang or fill memory with
const dxf = (...entities: readonly string[]) =>
  fromDxf(dxfText({ units: 1, entities }), { chosen: null, usual: 'inches' });

const point = (coordinates: string) =>
  fromGeoJson(`{"type":"Point","coordinates":${coordinates}}`, null);

describe('files that were found to trip a reader', () => {
  it('[I61] lists in lists without end are quoted in one short line', () => {
    const deep = point('['.repeat(50_000) + ']'.repeat(50_000));
    expect(reasonOf(deep)).toMatch(/^geometry: expected longitude .* found \[\[\[\[…\]\]\]\]$/);
    expect(reasonOf(point('[181,95,[1,[2,[3,[4]]]],{"a":1}]'))).toContain(
      'found [181,95,[1,[2,[…]]],{…}]',
    );
    expect(quotedText(`a${' '.repeat(1_000_000)}b`)).toBe('“a”');
    expect(quotedText('ab'.repeat(5_000_000))).toBe(`“${'ab'.repeat(20)}…”`);
  });

  it('[I62] what bows out farther than a site is refused by its place, the rest is read', () => {
    const bulge = (size: string) =>
      entity('LWPOLYLINE', 'A', [70, 0], [10, 0], [20, 0], [42, size], [10, 9], [20, 0]);
    const found = foundIn(dxf(line('A', 0, 0, 0, 5), bulge('1e300'), bulge('0.5')));
    expect(found.refused).toEqual([
      { where: 'entity 2, LWPOLYLINE on A', reason: 'has a curve of over 10 miles' },
    ]);
    expect(found.groups.flatMap((group) => ('paths' in group ? group.paths : []))).not.toEqual([]);
  });

  it('[I62] what a block carries past all numbers is refused by its place', () => {
    const text = dxfText({
      units: 1,
      blocks: [block('B', [0, 0], line('0', 0, 0, 9, 0))],
      entities: [
        line('A', 0, 0, 5, 0),
        entity('INSERT', 'A', [2, 'B'], [10, '1e308'], [20, 0], [41, '1e308']),
        entity('INSERT', 'A', [2, 'B'], [10, 0], [20, 0], [70, 2], [44, 'Infinity']),
      ],
    });
    expect(foundIn(fromDxf(text, { chosen: null, usual: 'feet' })).refused).toContainEqual({
      where: 'entity 3, INSERT on A',
      reason: 'expected numbers for its coordinates',
    });
  });

  it('[I62] an arc so flat that it is all but straight has few pieces, within what is allowed', () => {
    const [start, end] = [{ x: 0, y: 0 } as SitePoint, { x: 600_000, y: 0 } as SitePoint];
    expect(arcPoints(bowed(start, end, 1e-5), 1 / 4)).toHaveLength(2);
    expect(arcPoints(bowed(start, end, 0.9), 1 / 4)).toHaveLength(3);
    const spotted = { name: '', points: [start, start], bows: [1e-300, 0], closed: false };
    expect(straightened(spotted, inches(1)).points).toEqual([start, start]);
  });

  it('[I63] blocks come to so many things and no more, and a fault in one is told once', () => {
    const rows = (count: number, inside: string) =>
      fromDxf(
        dxfText({
          blocks: [block('B', [0, 0], inside)],
          entities: [entity('INSERT', 'A', [2, 'B'], [10, 0], [20, 0], [70, count], [44, 3])],
        }),
        { chosen: null, usual: 'feet' },
      );
    expect(reasonOf(rows(25_001, line('0', 0, 0, 1, 1)))).toBe(
      'its blocks come to more than 50,000 things',
    );
    const broken = line('0', 0, 0, 1, 1) + entity('INSERT', '0', [2, 'GONE'], [10, 0], [20, 0]);
    expect(foundIn(rows(500, broken)).refused).toHaveLength(1);
  });

  it('[I64] more corners than are looked at are refused before they fill the memory', () => {
    const circles = Array.from({ length: 150 }, (_, n) =>
      entity('CIRCLE', 'LOT', [10, n], [20, 0], [40, 600_000]),
    );
    const found = foundIn(dxf(...circles));
    const bring = () =>
      bringIn(emptySite({ specs: {}, hardware: {} }), found, {
        becomes: Object.fromEntries(found.groups.map(({ key }) => [key, 'boundary'])),
        fence: null,
        utility: { width: inches(2), tolerance: inches(24) },
        heights: usualHeights,
        chord: inches(1),
      });
    expect(bring).toThrow(
      'LOT: expected at most 200000 corners in all lines, found more: leave some layers out',
    );
  });

  it.each([
    ['a file that unpacks to 150 MB in one block', carried(oneBlock(97, 600_000))],
    ['one packed over and over', carried(packed(97, 1e8, 2), '[/FlateDecode /FlateDecode]')],
  ])('[I66] %s is told to be too large', async (_, file) => {
    const found = await siteInPdf(madePdf([...carrying(), file]));
    expect(found).toMatchObject({
      site: { reason: 'the site file in it, “yard.site.json”: too large: expected at most 60 MB' },
    });
  });

  it('[I66] a file in more filters than any writer uses is told', async () => {
    const file = carried(packed(97, 100, 1), `[${'/FlateDecode '.repeat(500)}]`);
    expect(await siteInPdf(madePdf([...carrying(), file]))).toMatchObject({
      site: {
        reason: 'the site file in it, “yard.site.json”: it is packed 500 times: expected at most 4',
      },
    });
  });

  const list = (type: string, stream: Uint8Array, more: string) => ({
    fields: `/Type /${type} /Filter /FlateDecode /Length ${stream.length} ${more}`,
    stream,
  });
  const file = carried(new Uint8Array(deflateSync('{}')));

  it.each([
    ['a packed list of 150 MB', list('ObjStm', oneBlock(32, 600_000), '/N 1 /First 4'), /damaged/],
    [
      'a list of a thousand million places',
      list('XRef', packed(0, 100, 1), '/Size 1000000000 /W [1 2 1] /Root 1 0 R'),
      /expected format/,
    ],
  ])('[I65] %s holds nothing up', async (_, object, said) => {
    const found = await siteInPdf(madePdf([...carrying(), file, object]));
    expect(found).toMatchObject({ site: { reason: expect.stringMatching(said) } });
  });

  it.each(['%', '1', '1 ', '('])(
    '[I65] nor does a million of %j between its objects',
    async (mark) => {
      const bytes = madePdf([...carrying(), file], `${mark.repeat(200_000)}\n`);
      const found = await siteInPdf(bytes);
      expect(found).toMatchObject({ site: { reason: expect.stringMatching(/expected format/) } });
    },
  );

  it('[I67] names without end make no line without end', () => {
    const sorts = Array.from({ length: 40 }, (_, n) => entity(`SORT${n}${'X'.repeat(500)}`, '0'));
    const found = foundIn(dxf(...sorts, line('A', 0, 0, 5, 0)));
    expect(found.told.find((told) => told.startsWith('Cannot be brought'))).toMatch(
      /^.{1,300}, 32 of other sorts$/,
    );
    const layers = Array.from({ length: 40 }, (_, n) => [`${n} ${'L'.repeat(190)}`, 1, 7] as const);
    const hidden = dxfText({ layers, entities: layers.map(([name]) => line(name, 0, 0, 5, 0)) });
    const off = foundIn(fromDxf(hidden, { chosen: null, usual: 'feet' })).told.at(-1);
    expect(off).toMatch(/^Off or frozen in the file.{1,270} and \d+ more$/);
  });

  it('[I67] how far a file was moved is told in few letters, however far', () => {
    const { told } = foundIn(dxf(line('A', 0, 1e299, 9, 1e299)));
    expect(told.at(-1)).toBe('Moved: 0, 0 is here 0 east, 1.000e+299 north in the file, in inches');
  });

  it('[I67] what is all control characters is quoted in a short line', () => {
    const said = openSite('\u0011'.repeat(1000));
    expect(reasonOf(said)).toMatch(
      /^this is not a site file: expected JSON, found "(?:\\u0011){13}…"$/,
    );
  });

  it('[I69] a cell of digits without end is refused at once', () => {
    const begun = performance.now();
    const text = `x,y\n${'12'.repeat(400_000)}x,1\n0,0\n`;
    const found = foundIn(pointsFromCsv(text, { chosen: null, usual: 'feet', order: null }));
    expect(found.refused.map(({ where }) => where)).toEqual(['line 2']);
    expect(performance.now() - begun).toBeLessThan(2000);
  });

  it('[I62] curves of any size in blocks of any scale are drawn or refused by their place', () => {
    const sizes = ['1e-300', '1e-100', '1e-9', '1', '1e9', '1e100', '1e300'];
    const curves = sizes.map((size) => entity('CIRCLE', '0', [10, 0], [20, 0], [40, size]));
    const inserts = sizes.flatMap((x) =>
      sizes.map((y) => entity('INSERT', 'A', [2, 'B'], [10, 0], [20, 0], [41, x], [42, y])),
    );
    const text = dxfText({ blocks: [block('B', [0, 0], ...curves)], entities: inserts });
    const found = foundIn(fromDxf(text, { chosen: null, usual: 'feet' }));
    expect(new Set(found.refused.map(({ reason }) => reason))).toEqual(
      new Set([
        'has a curve of over 10 miles',
        'expected numbers for its coordinates',
        'expected a line of some length, found one spot',
      ]),
    );
    expect(found.groups.length).toBeGreaterThan(0);
  });

  it('[I62] an arc whose radius is past all numbers is straight', () => {
    const path = {
      name: '',
      points: [
        { x: 0, y: 0 },
        { x: 1000, y: 0 },
      ] as SitePoint[],
      bows: [1e-308, 0],
      closed: false,
    };
    expect(straightened(path, inches(1 / 4)).points).toEqual(path.points);
  });

  it('[I67] the currency and figures of rows are told in one short line', () => {
    const prices = pricesFromCsv(
      'Item,Unit,Price,Currency\na,each,1,\u001b[31mUSD\nb,each,1,EUR\n',
    );
    expect(prices).toMatchObject({
      value: {
        refused: [{ reason: 'Currency: expected [31mUSD as in the rows before, found “EUR”' }],
      },
    });
    const calls = readCalls(`thence N 26°10' E 285.10 feet, 1 foot${', 20 feet'.repeat(300)}`);
    const lines = calls.ok ? calls.value.pieces.flatMap(({ doubts }) => doubts) : [];
    expect(lines.find((one) => one.startsWith('also'))).toMatch(
      /^also tells .{1,80} and \d+ more: not drawn$/,
    );
  });

  it('[I69] a header of 20,000 columns is looked through once, stops without end are passed', () => {
    const wide = `Kind,Name${',x'.repeat(20_000)}\n${`hinge,h${',1'.repeat(20_000)}\n`.repeat(20)}`;
    const begun = performance.now();
    expect(bookFromCsv(wide, { book: {}, freshId: () => 'hardware:1' }).ok).toBe(true);
    expect(readCalls(`thence N 26°10' E ${',1'.repeat(40_000)}`).ok).toBe(true);
    expect(performance.now() - begun).toBeLessThan(4000);
  });
});
