import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { missingLetters } from '../../src/drawing/missingLetters.ts';
import { missingLettersText } from '../../src/drawing/missingLettersText.ts';
import type { Page } from '../../src/drawing/sheet/page.ts';
import { pageAtoms } from '../../src/drawing/sheet/pageAtoms.ts';
import { sheetSet } from '../../src/drawing/sheet/sheetSet.ts';
import { isPrintable } from '../../src/drawing/textWidth.ts';
import { layOutSite } from '../../src/engine/layOutSite.ts';
import type { Site } from '../../src/site/site.ts';
import { sampleYards } from './sampleYards.ts';
import { textsOf } from './textsOf.ts';

const yard = sampleYards.find(({ name }) => name === 'corner-lot');
if (yard === undefined) throw new Error('expected the corner lot');
const { site } = yard;

const pagesOf = (own: Site): readonly Page[] =>
  sheetSet(own, layOutSite(own), { paper: 'letter', siteText: '' });
const job = (more: Partial<Site['job']>): Site => ({ ...site, job: { ...site.job, ...more } });
const told = (own: Site) => missingLetters(own, pagesOf(own));

const each = <T extends object>(map: Readonly<Record<string, T>>, more: Partial<T>) =>
  Object.fromEntries(Object.entries(map).map(([id, one]) => [id, { ...one, ...more }]));

/** A site with texts in fields that its sheets print, and in two that they do not. */
const filled = ([name, remark, gate, line, part]: readonly string[]): Site =>
  ({
    ...job({ name: name ?? '', remark: remark ?? '' }),
    gates: each(site.gates, { label: gate ?? '' }),
    lines: each(site.lines, { label: line ?? '' }),
    hardware: each(site.hardware, { remark: part ?? '' }),
    specs: each(site.specs, { remark: part ?? '' }),
  }) as Site;

/** Whether some page has a `?` put in: a sign that nobody typed stands where the letter would. */
const isPut = (texts: readonly string[]): boolean => {
  const marked = texts.map((text) =>
    [...text.normalize('NFC')]
      .map((letter) => (/\s/u.test(letter) || isPrintable(letter) ? letter : '¿'))
      .join(''),
  );
  return pagesOf(filled(marked)).some((page) =>
    textsOf(pageAtoms(page)).some(({ text }) => text.includes('¿')),
  );
};

describe('letters that the sheet font lacks', { timeout: 120_000 }, () => {
  it('[D121] are told once each, with the field or the part of the site that they stand in', () => {
    expect(told(site)).toEqual([]);
    expect(told(job({ name: '北門 北 Hof', customer: 'Ворота' }))).toEqual([
      { where: 'Job name', letters: '北門' },
      { where: 'Customer', letters: 'Ворта' },
    ]);
    const gates = each(site.gates, { label: '門' }) as Site['gates'];
    expect(told({ ...site, gates })).toEqual([{ where: 'the gates', letters: '門' }]);
  });

  it('[D121] are not told where no page prints them, nor a ? that somebody typed', () => {
    const hardware = each(site.hardware, { remark: '北門' }) as Site['hardware'];
    expect(told({ ...site, hardware })).toEqual([]);
    expect(told(job({ name: 'Really?' }))).toEqual([]);
    expect(told({ ...job({ name: 'Really?' }), hardware })).toEqual([]);
  });

  it('[D121] are told of exactly those sites of which some page has a ? put in', () => {
    const letters = fc.constantFrom(...'aM Öß \u0301\n', '北', 'ب', 'Ж', '\u{1F3E1}', '\u202e');
    const plain = fc.string({ unit: fc.constantFrom(...'aM Ö'), maxLength: 8 });
    const text = fc.oneof(
      { weight: 3, arbitrary: plain },
      fc.string({ unit: letters, maxLength: 8 }),
    );
    fc.assert(
      fc.property(fc.array(text, { minLength: 5, maxLength: 5 }), (texts) => {
        expect(told(filled(texts)).length > 0).toBe(isPut(texts));
      }),
      { numRuns: 25 },
    );
  });

  it('[D121] stand in one line, unseen ones by their number', () => {
    const say = (letters: string, where = 'Job name') => missingLettersText([{ letters, where }]);
    expect(missingLettersText([])).toBeNull();
    expect(say('北門')).toBe(
      'The sheet font has no letters for “北門” in Job name: they print as ?',
    );
    expect(say('\u202eب\u0000')).toBe(
      'The sheet font has no letters for “U+202E ب U+0000” in Job name: they print as ?',
    );
    expect(say('一二三四五六七八九')).toContain('“一二三四五六七八…”');
    const many = Array.from({ length: 6 }, (_, n) => ({ letters: '北', where: `part ${n}` }));
    expect(missingLettersText(many)).toMatch(/in part 3 and in 2 more: they print as \?$/);
  });
});
