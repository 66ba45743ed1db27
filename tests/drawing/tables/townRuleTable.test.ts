import { describe, expect, it } from 'vitest';
import { pageAtoms } from '../../../src/drawing/sheet/pageAtoms.ts';
import { sheetFrame } from '../../../src/drawing/sheet/sheetFrame.ts';
import { sheetSet } from '../../../src/drawing/sheet/sheetSet.ts';
import { townRuleTable } from '../../../src/drawing/tables/townRuleTable.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { addTownRule } from '../../../src/site/edits/addTownRule.ts';
import { saveSite } from '../../../src/site/saveSite.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence } from '../../engine/plainYard.ts';
import { textsOf } from '../textsOf.ts';

const plain = fence(bare, [
  [0, 0],
  [1200, 0],
]);
const words = Array.from({ length: 800 }, (_, n) => `w${n}`)
  .join(' ')
  .slice(0, 4000);

/** Rules of invented towns, one as long as the document holds. */
const ruled = [
  { town: 'Inventedville', measure: null, limit: null, words, source: '' },
  {
    town: 'Invented Falls',
    measure: 'fence no higher than' as const,
    limit: inches(48),
    words: 'In\nfront yards',
    source: 'Invented code 1-2',
  },
  { town: 'Inventedville', measure: null, limit: null, words: 'Ask', source: 'By telephone' },
].reduce<Site>((so, rule) => addTownRule(so, rule), plain);

describe('the rules of towns on the sheets', () => {
  it('[D90] stand by town with where each says so; a long one goes on in rows that have room', () => {
    const { rows } = townRuleTable(ruled);
    expect(rows[0]).toEqual([
      'Invented Falls',
      `fence no higher than 4'-0"; In front yards`,
      'Invented code 1-2',
    ]);
    expect(rows[1]?.[0]).toBe('Inventedville');
    expect(rows[1]?.[2]).toBe('as the company has it, no source told');
    expect(rows.at(-1)).toEqual(['', 'Ask', 'By telephone']);
    const long = rows.slice(1, -1).map(([, asks = '']) => asks);
    expect(long.join(' ')).toBe(words);
    expect(Math.max(...long.map(({ length }) => length))).toBeLessThanOrEqual(500);
  });

  it('[D90] are printed with the set, and not where a site carries none', () => {
    const printed = (site: Site) =>
      sheetSet(site, layOutSite(site), {
        paper: 'letter',
        orientation: 'landscape',
        siteText: saveSite(site),
      });
    const pages = printed(ruled);
    expect(pages.map(({ title }) => title).join('; ')).toMatch(/rules of towns/i);
    const texts = pages.flatMap((page) => textsOf(pageAtoms(page)));
    expect(texts.map(({ text }) => text).join(' ')).toContain('Invented code 1-2');
    const out = pages.flatMap((page) => {
      const { paper } = page;
      const { y, height } = sheetFrame(paper).outer;
      return textsOf(pageAtoms(page)).filter(({ at }) => at.y < y || at.y > y + height);
    });
    expect(out).toEqual([]);
    expect(
      printed(plain)
        .map(({ title }) => title)
        .join('; '),
    ).not.toMatch(/rules of towns/i);
  });
});
