import DxfReader from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { sheetSet } from '../../src/drawing/sheet/sheetSet.ts';
import { sheetTableNames, sheetTables } from '../../src/drawing/tables/sheetTables.ts';
import { layOutSite } from '../../src/engine/layOutSite.ts';
import { toCsv } from '../../src/exporters/csv/toCsv.ts';
import { stakesToCsv } from '../../src/exporters/csv/stakesToCsv.ts';
import { toDxf } from '../../src/exporters/dxf/toDxf.ts';
import { toSvg } from '../../src/exporters/svg/toSvg.ts';
import { readCsv } from '../../src/importers/csv/readCsv.ts';
import { openSite } from '../../src/site/openSite.ts';
import { saveSite } from '../../src/site/saveSite.ts';
import type { Site } from '../../src/site/site.ts';
import { siteFile } from '../../src/site/siteFile.ts';
import { pageAtoms } from '../../src/drawing/sheet/pageAtoms.ts';
import { pdfInfoFor } from '../../src/exporters/pdf/pdfInfoFor.ts';
import { toPdf } from '../../src/exporters/pdf/toPdf.ts';
import { toPng } from '../../src/exporters/png/toPng.ts';
import { letteringFaults } from '../drawing/letteringFaults.ts';
import { textsOf } from '../drawing/textsOf.ts';
import { readPdf } from './pdf/readPdf.ts';
import { sheetFonts } from './pdf/sheetFonts.ts';
import { pngParts } from './png/pngParts.ts';
import { readPng } from './png/readPng.ts';
import { samples } from './samples.ts';
import { svgFault } from './svg/svgFault.ts';

const plain = samples.find(({ name }) => name === 'corner-lot');
if (plain === undefined) throw new Error('expected the corner lot');

/** The fields of a site that a person types freely. */
const typed = new Set<string>([
  ...(['label', 'text', 'remark', 'name', 'customer', 'place', 'drawnBy'] as const),
  ...(['date', 'revision', 'why', 'by'] as const),
]);

/** A value with a text in place of each that was typed. */
const filled = (value: unknown, text: string): unknown => {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map((own) => filled(own, text));
  return Object.fromEntries(
    Object.entries(value).map(([key, own]) => [
      key,
      typed.has(key) && typeof own === 'string' ? text : filled(own, text),
    ]),
  );
};

/** The sample with a text everywhere; null where a site may not hold such a text. */
const siteOf = (text: string): Site | null => {
  const opened = openSite(JSON.stringify(filled(JSON.parse(saveSite(plain.site)), text)));
  return opened.ok ? opened.value : null;
};

const texts: readonly (readonly [string, string])[] = [
  ['Arabic, which runs from right to left', 'بوابة الحديقة'],
  ['Chinese', '北門大街'],
  ['Cyrillic', 'Ворота у дома'],
  ['emoji', '\u{1F3E1}\u{1F468}\u200D\u{1F33E} yard'],
  ['marks over letters', 'e\u0301\u0301\u0301\u0301 a\u0308'],
  ['a turn of direction', 'abc\u202Etxt.exe'],
  ['markup', '<script>alert(1)</script> ]]> &lt; &#0; "quoted"'],
  ['a long word', 'W'.repeat(190)],
  ['a formula', '=HYPERLINK("http://x.invalid";"y")'],
  ['codes of a drawing', '\\P{\\fArial;x} %%c %%d \\U+2205'],
  ['what PDF reads', '\\) Tj ET (endstream endobj'],
  ['NUL and other controls', 'a\u0000b\u0007\u001b[31m\u0085\u2028c'],
  ['half of a pair', 'a\ud83d'],
  ['the end of a DXF', '0\nENDSEC\n0\nEOF\n'],
  ['a text of many words', 'gate by the lane '.repeat(11)],
];

/** What a spreadsheet may take for a formula; on a page they are texts like any other. */
const formulas: readonly (readonly [string, string])[] = [
  ['a sum', '+1'],
  ['a difference', '-2+3'],
  ['an old function', '@SUM(A1)'],
  ['a formula behind a tab', '\t=1+1'],
  ['a formula behind a new line', '\r\n=1+1'],
  ['a formula behind a quote and a blank', '" =1+1'],
  ['a formula behind an apostrophe', "'=1+1"],
  ['a formula in wide letters', '\uff1d1+1'],
  ['a wide sign of an old function', '\uff20SUM(A1)'],
];

/** What an SVG of a page is made of, and nothing else. */
const elements = ['svg', 'title', 'rect', 'g', 'clipPath', 'path', 'text'];

/** A cell that a spreadsheet would run: it begins as a formula does, whatever stands before that unseen. */
const runs = /^["\s\p{Cc}\p{Cf}]*[=+\-@\uff1d\uff0b\uff0d\uff20]|^[\t\r\n]/u;
const isNumber = /^-?\d+(?:\.\d+)?$/;

/** The cells of a text of RFC 4180, read apart from the writer. */
const cellsIn = (csv: string): string[] =>
  [...csv.matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(?:,|\r\n)/gy)].map(
    ([, quoted, bare = '']) => quoted?.replaceAll('""', '"') ?? bare,
  );

/** The cells of every table of a site that would be run. */
const runIn = (site: Site): string[] => {
  const layout = layOutSite(site);
  const csvs = [
    stakesToCsv(site, layout, { unit: 'feet', east: 0, north: 0 }),
    ...sheetTableNames.map((name) => {
      const { of, tables } = sheetTables(name, site, layout);
      return toCsv(of, tables);
    }),
  ];
  const cells = csvs.flatMap((csv) => {
    const found = cellsIn(csv);
    const read = readCsv(csv);
    if (!read.ok) throw new Error(read.reason);
    // both readers find as many, blank lines apart
    expect(found.length).toBe(read.value.reduce((sum, row) => sum + row.cells.length, 0));
    return found;
  });
  expect(cells.length).toBeGreaterThan(300);
  return cells.filter((cell) => !isNumber.test(cell) && runs.test(cell));
};

const thingsIn = (site: Site): number =>
  new DxfReader().parseSync(toDxf(site, layOutSite(site)))?.entities.length ?? 0;

/** As many things as a DXF of the sample has with a usual name in every field. */
const usualThings = thingsIn(filled(plain.site, 'abc') as Site);

/** Longer than any file may hold: such a site is given to the writers as it stands. */
const tooLong = ['W', '北'].map((own): readonly [string, string, Site] => {
  const text = own.repeat(5000);
  return [`5,000 letters of ${own}`, text, filled(plain.site, text) as Site];
});

const sites = [
  ...texts.map(([name, text]): readonly [string, string, Site] => {
    const site = siteOf(text);
    if (site === null) throw new Error(`expected a site that may hold “${text}”`);
    return [name, text, site];
  }),
  ...tooLong,
];

describe.each(sites)('a site with %s in every field', { timeout: 120_000 }, (_, text, site) => {
  const layout = layOutSite(site);
  const pages = sheetSet(site, layout, { paper: 'letter', siteText: text });

  it('[X65] has pages on which nothing overlaps or leaves the frame, as well-formed SVG', async () => {
    expect(pages.flatMap(letteringFaults)).toEqual([]);
    for (const page of pages) {
      const svg = toSvg(page);
      expect(await svgFault(svg)).toBeNull();
      const names = new Set([...svg.matchAll(/<([a-zA-Z]+)/g)].map(([, name]) => name));
      expect([...names].filter((name) => !elements.includes(name ?? ''))).toEqual([]);
      expect(svg.match(/<text /g)?.length).toBe(textsOf(pageAtoms(page)).length);
    }
  });

  it('[X65] is a PDF that another program reads, text for text, and a PNG', async () => {
    const set = { sort: 'Crew sheet', siteText: text, file: siteFile(site) } as const;
    const bytes = await toPdf(pages, sheetFonts, pdfInfoFor(site, set), set.file);
    const read = await readPdf(bytes);
    expect(read.pages).toHaveLength(pages.length);
    pages.forEach((page, n) => {
      const bare = (words: readonly string[]) => words.join('').replace(/\s/g, '').length;
      const due = textsOf(pageAtoms(page)).map((own) => own.text);
      expect(bare(read.pages[n]?.texts ?? [])).toBe(bare(due));
    });
    const [first] = pages;
    if (first === undefined) throw new Error('expected a page');
    const png = await toPng(first, pngParts, 72);
    expect(png.ok && readPng(png.value).width).toBe(612);
  });

  it('[X65] is a DXF of as many things as one with usual names', () => {
    expect(thingsIn(site)).toBe(usualThings);
  });

  it('[X65] has tables of which no cell is run', () => {
    expect(runIn(site)).toEqual([]);
  });
});

it.each(formulas)('[X65] %s in every field is run in no table', (_, text) => {
  const site = siteOf(text);
  if (site === null) throw new Error(`expected a site that may hold “${text}”`);
  expect(runIn(site)).toEqual([]);
});
