import { describe, expect, it } from 'vitest';
import { pageAtoms } from '../../../src/drawing/sheet/pageAtoms.ts';
import { sheetSet } from '../../../src/drawing/sheet/sheetSet.ts';
import {
  sheetTableNames,
  sheetTables,
  type SheetTableName,
} from '../../../src/drawing/tables/sheetTables.ts';
import { sampleSite } from '../../cli/sampleSites.ts';
import { samples } from '../../exporters/samples.ts';
import { openSite } from '../../../src/site/openSite.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { textsOf } from '../textsOf.ts';

describe.each(samples)('the tables of $name', ({ site, layout }) => {
  it.each(sheetTableNames)(
    '[D120] %s: all of one name have one head, and every row fills it',
    (name) => {
      const { tables } = sheetTables(name, site, layout);
      const heads = tables.map(({ columns }) => columns.map(({ heading }) => heading));
      heads.forEach((head) => expect(head).toEqual(heads[0]));
      tables.forEach(({ columns, rows }) =>
        rows.forEach((row) => expect(row).toHaveLength(columns.length)),
      );
    },
  );
});

describe('the tables of a yard and its sheets', () => {
  const opened = openSite(sampleSite('taped-yard'));
  if (!opened.ok) throw new Error(opened.reason);
  const site = opened.value;
  const layout = layOutSite(site);
  const pages = sheetSet(site, layout, { paper: 'arch-d', siteText: '' });
  const wordsOf = (text: string): string[] => text.split(/\s+/).filter((word) => word !== '');
  const printed = new Set(
    pages.flatMap((page) =>
      textsOf(pageAtoms(page)).flatMap(({ text }) =>
        // a figure that is alike in all rows stands in a sentence
        wordsOf(text).flatMap((word) => [word, word.replace(/[.,;:]$/, '')]),
      ),
    ),
  );

  it.each([
    'counts',
    'openings',
    'holes',
    'ties',
    'tie-checks',
    'cuts',
    'flags',
    'measured',
    'set-openings',
    'set-leaves',
    'set-posts',
  ] as const satisfies SheetTableName[])(
    '[D120] %s: every word of every cell stands on the sheets',
    (name) => {
      const cells = sheetTables(name, site, layout).tables.flatMap(({ rows }) => rows.flat());
      expect(cells.length).toBeGreaterThan(2);
      expect(cells.flatMap(wordsOf).filter((word) => !printed.has(word))).toEqual([]);
    },
  );
});
