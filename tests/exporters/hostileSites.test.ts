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
import { letteringFaults } from '../drawing/letteringFaults.ts';
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
  ['a sum', '+1'],
  ['a difference', '-2+3'],
  ['an old function', '@SUM(A1)'],
  ['codes of a drawing', '\\P{\\fArial;x} %%c %%d \\U+2205'],
  ['what PDF reads', '\\) Tj ET (endstream endobj'],
];

/** A cell that a spreadsheet would run: it begins as a formula does, whatever stands before that unseen. */
const runs = /^[\s\u200b-\u200f\u202a-\u202e]*[=+\-@\uff1d\uff0b\uff0d\uff20]/u;
const isNumber = /^-?\d+(?:\.\d+)?$/;

describe.each(texts)('a site with %s in every field', (_, text) => {
  const site = siteOf(text);
  if (site === null) throw new Error(`expected a site that may hold “${text}”`);
  const layout = layOutSite(site);

  it('[X65] has pages on which nothing overlaps or leaves the frame, as well-formed SVG', async () => {
    const pages = sheetSet(site, layout, { paper: 'letter', siteText: text });
    expect(pages.flatMap(letteringFaults)).toEqual([]);
    for (const page of pages.slice(0, 4)) {
      const svg = toSvg(page);
      expect(await svgFault(svg)).toBeNull();
      const names = new Set([...svg.matchAll(/<([a-zA-Z]+)/g)].map(([, name]) => name));
      expect([...names].filter((name) => name === 'script')).toEqual([]);
    }
  });

  it('[X65] is a DXF of as many things as one with usual names', () => {
    const count = (own: Site): number =>
      new DxfReader().parseSync(toDxf(own, layOutSite(own)))?.entities.length ?? 0;
    const usual = siteOf('abc');
    expect(count(site)).toBe(usual === null ? NaN : count(usual));
  });

  it('[X65] has tables of which no cell is run', () => {
    const csvs = [
      stakesToCsv(site, layout, { unit: 'feet', east: 0, north: 0 }),
      ...sheetTableNames.map((name) => {
        const { of, tables } = sheetTables(name, site, layout);
        return toCsv(of, tables);
      }),
    ];
    for (const csv of csvs)
      for (const line of csv.split('\r\n'))
        for (const cell of line.split(/,(?=(?:[^"]*"[^"]*")*[^"]*$)/)) {
          const shown = cell.replace(/^"|"$/g, '');
          if (!isNumber.test(shown)) expect(shown).not.toMatch(runs);
        }
    expect(readCsv(csvs[0] ?? '')).toBeTruthy();
  });
});
