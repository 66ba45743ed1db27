import { unsurveyed } from '../../../src/engine/survey/survey.ts';
import { pageAtoms } from '../../../src/drawing/sheet/pageAtoms.ts';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Layout } from '../../../src/engine/layout.ts';
import { tapeReadings } from '../../../src/engine/posts/tapeReadings.ts';
import type { Page } from '../../../src/drawing/sheet/page.ts';
import type { PaperName } from '../../../src/drawing/sheet/papers.ts';
import { letters } from '../../../src/drawing/sheet/letters.ts';
import { readers, setParts, type Reader } from '../../../src/drawing/sheet/setParts.ts';
import { sheetSet } from '../../../src/drawing/sheet/sheetSet.ts';
import { emptySite } from '../../../src/site/emptySite.ts';
import type { Site } from '../../../src/site/site.ts';
import { cautions } from '../../../src/trade/cautions.ts';
import { fineStyle } from '../../../src/units/fineStyle.ts';
import { formatLength } from '../../../src/units/formatLength.ts';
import { anyLines } from '../anyYard.ts';
import { handYard } from '../handYard.ts';
import { sampleYards } from '../sampleYards.ts';
import { letteringFaults } from '../letteringFaults.ts';
import { textsOf } from '../textsOf.ts';

/** What is wrong with the lettering of some pages; nothing is. */
const faults = (pages: readonly Page[]): string[] => pages.flatMap(letteringFaults);

const wordsOf = (pages: readonly Page[]): string =>
  pages.flatMap((page) => textsOf(pageAtoms(page)).map(({ text }) => text)).join(' | ');

/** Every figure that a crew builds by. */
const figuresOf = (site: Site, layout: Layout): string[] => {
  const { lengths } = site;
  const readings = Object.values(layout.lines).flatMap((line) =>
    line.runs.flatMap((run) =>
      tapeReadings(run, site.lines[line.id]?.hook ?? 'start', lengths).posts.map(
        ({ reading }) => reading,
      ),
    ),
  );
  const openings = Object.values(layout.gates).map(({ opening }) => opening.target);
  return [
    ...readings.map((length) => formatLength(length, lengths)),
    ...openings.map((length) => formatLength(length, fineStyle(lengths))),
  ];
};

const papers: PaperName[] = ['letter', 'tabloid', 'arch-c', 'a4'];

describe.each(sampleYards)('the sheets of $name', ({ site, layout, text }) => {
  it.each(papers)(
    '[D9] on %s have no text over another, outside the frame or too small',
    (paper) => {
      expect(faults(sheetSet(site, layout, { paper, siteText: text }))).toEqual([]);
    },
  );

  it('[D25] say every reading and every opening', () => {
    const words = wordsOf(sheetSet(site, layout, { paper: 'tabloid', siteText: text }));
    const missing = figuresOf(site, layout).filter((figure) => !words.includes(figure));
    expect(missing).toEqual([]);
  });

  it('[D25] carry every caution, the job, and their number on each page', () => {
    const pages = sheetSet(site, layout, { paper: 'letter', siteText: text });
    const words = wordsOf(pages).replaceAll(' | ', ' ');
    for (const { text: caution } of cautions) expect(words).toContain(caution);
    pages.forEach((page, n) => {
      const own = textsOf(pageAtoms(page)).map(({ text: written }) => written);
      expect(own).toContain(`Sheet ${n + 1} of ${pages.length}`);
      expect(own).toContain(site.job.name);
    });
  });
});

describe('sheetSet', () => {
  const empty = emptySite({ specs: {}, hardware: {} });
  const bare: Layout = {
    lines: {},
    posts: new Map(),
    gates: {},
    ground: null,
    survey: unsurveyed,
    flags: [],
  };

  it('[D9] holds for any yard, either way round', () => {
    const way = fc.constantFrom('portrait' as const, 'landscape' as const);
    fc.assert(
      fc.property(anyLines, way, fc.constantFrom(...papers), (lines, orientation, paper) => {
        const { site, layout } = handYard(lines);
        expect(faults(sheetSet(site, layout, { paper, orientation, siteText: '' }))).toEqual([]);
      }),
      { numRuns: 15 },
    );
  });

  it('[D2] cuts names that are too long, and prints what it is given in place of code', () => {
    const long = 'A very long name '.repeat(11);
    const job = { ...empty.job, name: long, customer: long, place: long, drawnBy: long };
    const site = { ...empty, job: { ...job, date: '<b>', revision: '門' } };
    const pages = sheetSet(site, bare, { paper: 'letter', siteText: '' });
    expect(faults(pages)).toEqual([]);
    expect(wordsOf(pages)).toMatch(/A very long name .*…/);
    expect(wordsOf(pages)).toContain('<b>');
  });

  it('an empty site still has a cover, a plan, a load list and the cautions', () => {
    const pages = sheetSet(empty, bare, { paper: 'a4', siteText: '' });
    expect(pages.map(({ title }) => title)).toEqual(['1 Cover', '2 Plan', '3 Load list, cautions']);
  });

  it('[D36] the plan says which sheet lists the flags, where there are any', () => {
    const yard = sampleYards.find(({ name }) => name === 'corner-lot');
    if (yard === undefined) throw new Error('expected the corner lot');
    for (const paper of papers) {
      const pages = sheetSet(yard.site, yard.layout, { paper, siteText: '' });
      const [, plan = '', ...rest] = pages.map((page) => wordsOf([page]));
      const sheet = /flags F1, F2, …: see sheet (\d+)/.exec(plan)?.[1];
      expect(Number(sheet)).toBe(rest.findIndex((words) => words.includes('Flags | Flag')) + 3);
      expect(rest[Number(sheet) - 3]).toContain('F1');
    }
    expect(wordsOf(sheetSet(empty, bare, { paper: 'letter', siteText: '' }))).not.toContain(
      'flags',
    );
  });

  it('[D37] a leg too short for its bays names its tape on the plan', () => {
    const yard = sampleYards.find(({ name }) => name === 'corner-lot');
    if (yard === undefined) throw new Error('expected the corner lot');
    const [, plan] = sheetSet(yard.site, yard.layout, { paper: 'letter', siteText: '' });
    if (plan === undefined) throw new Error('expected a plan');
    expect(wordsOf([plan])).toContain('8\'-6", see tape A–L');
  });

  it('[D35] a page is named for every part that begins on it, in as many lines as that takes', () => {
    const parts = new Set([...setParts.map(({ name }) => name), 'Cautions']);
    for (const { site, layout } of sampleYards) {
      const pages = sheetSet(site, layout, { paper: 'tabloid', siteText: '' });
      const begun = pages.slice(1).flatMap((page) => {
        const texts = textsOf(pageAtoms(page));
        const heads = texts.flatMap(({ text, size }) =>
          size === letters.heading && parts.has(text) ? [text] : [],
        );
        for (const head of heads) expect(page.title.toLowerCase()).toContain(head.toLowerCase());
        // the title block says all of it
        const name = page.title.replace(/^\d+ /, '');
        expect(wordsOf([page]).replaceAll(' | ', ' ')).toContain(name);
        return heads;
      });
      expect(begun.length).toBeGreaterThan(3);
    }
  });

  it('[D32] says once to set the second gate post by the opening, and how high the fence is', () => {
    const yard = sampleYards.find(({ name }) => name === 'corner-lot');
    if (yard === undefined) throw new Error('expected the corner lot');
    const words = wordsOf(sheetSet(yard.site, yard.layout, { paper: 'letter', siteText: '' }));
    expect(words.split('the other by the opening to hold')).toHaveLength(2);
    expect(words).toContain('Fence: fabric 4\'-0" high');
  });

  it('[D20] the check value is that of the saved text', () => {
    const words = wordsOf(sheetSet(empty, bare, { paper: 'letter', siteText: 'foobar' }));
    expect(words).toContain('Check BF9CF968');
  });

  it('[D5] ground too large for any scale is drawn to the smallest, and what is cut off is named', () => {
    const far = 600_000;
    const { site, layout } = handYard([
      {
        corners: [
          { x: -far, y: 0 },
          { x: far, y: 0 },
          { x: far, y: 5000 },
        ],
        closed: false,
        maxBay: 100_000,
        gates: [],
      },
    ]);
    const pages = sheetSet(site, layout, {
      paper: 'letter',
      orientation: 'landscape',
      siteText: '',
    });
    expect(wordsOf(pages)).toContain('Scale 1 in = 6000 ft.');
    expect(wordsOf(pages)).toContain('Not lettered on the plan for want of room');
    expect(faults(pages)).toEqual([]);
  });

  const numbersOf = (page: Page): number[] =>
    textsOf(pageAtoms(page)).flatMap(({ text }) => (/^\d+$/.test(text) ? [Number(text)] : []));

  it('[D143] a bubble at each gate names its detail and leads to the sheet that has it', () => {
    for (const { site, layout } of sampleYards) {
      const pages = sheetSet(site, layout, { paper: 'tabloid', siteText: '' });
      const plan = pages[1];
      if (plan === undefined) throw new Error('expected a plan');
      Object.values(layout.gates).forEach(({ posts }, n) => {
        const name = Object.values(site.gates)[n]?.label ?? '';
        const sheet = pages.findIndex(
          (page, at) => at > 1 && wordsOf([page]).includes(`${name}, `),
        );
        if (posts === null || sheet < 0) return;
        expect(numbersOf(plan)).toContain(sheet + 1);
        expect(plan.links.map(({ page }) => page)).toContain(sheet + 1);
      });
    }
  });

  it('[D144] links lie on their page and lead to a page of the set', () => {
    for (const { site, layout } of sampleYards)
      for (const reader of [undefined, ...readers]) {
        const who = reader === undefined ? {} : { reader };
        const pages = sheetSet(site, layout, { paper: 'letter', siteText: '', ...who });
        for (const { links, paper } of pages)
          for (const { rect, page } of links) {
            expect(pages[page - 1]).toBeDefined();
            expect(Math.min(rect.x, rect.y, rect.width, rect.height)).toBeGreaterThan(0);
            expect(rect.x + rect.width).toBeLessThan(paper.width);
            expect(rect.y + rect.height).toBeLessThan(paper.height);
          }
        // every row of the index that has room
        expect(pages[0]?.links.length).toBeGreaterThan(2);
      }
  });

  it('[D142] a part of a plan has a key plan that leads to all parts', () => {
    const yard = sampleYards.find(({ name }) => name === 'contractors-yard');
    if (yard === undefined) throw new Error("expected the contractor's yard");
    const pages = sheetSet(yard.site, yard.layout, { paper: 'letter', siteText: '' });
    const parts = pages.flatMap(({ title }, n) => (title.includes('Plan, part') ? [n + 1] : []));
    expect(parts.length).toBeGreaterThan(3);
    for (const part of parts) {
      const own = pages[part - 1];
      expect(own?.links.map(({ page }) => page)).toEqual(expect.arrayContaining(parts));
      expect(wordsOf(own === undefined ? [] : [own])).toContain('on sheet 2');
    }
  });

  it('[D153] lists of a plan that lies wide stand upright where that saves a quarter, unless a way is chosen', () => {
    const yard = sampleYards.find(({ name }) => name === 'contractors-yard');
    if (yard === undefined) throw new Error("expected the contractor's yard");
    const setOn = (paper: PaperName, orientation?: 'landscape') => {
      const way = orientation === undefined ? {} : { orientation };
      const pages = sheetSet(yard.site, yard.layout, { paper, siteText: '', ...way });
      expect(faults(pages)).toEqual([]);
      const upright = pages.filter(({ paper: own }) => own.width < own.height);
      return { pages: pages.length, upright: upright.map(({ title }) => title) };
    };
    const [free, chosen] = [setOn('letter'), setOn('letter', 'landscape')];
    expect(chosen.upright).toEqual([]);
    expect(free.upright[0]).toMatch(/ Openings$/);
    expect(free.upright.join()).not.toMatch(/Cover|Plan/);
    // 8.88 in of an upright column for 6.38 in of one that lies
    const lists = (of: typeof free): number => of.pages - (free.pages - free.upright.length);
    expect(lists(free)).toBeLessThan(0.8 * lists(chosen));
    // two columns lying on Tabloid are more than one that stands
    expect(setOn('tabloid').upright).toEqual([]);
  });

  it('[D145] each reader gets cover, plan and cautions, and what is theirs', () => {
    const yard = sampleYards.find(({ name }) => name === 'corner-lot');
    if (yard === undefined) throw new Error('expected the corner lot');
    const of = (reader: Reader) => {
      const pages = sheetSet(yard.site, yard.layout, { paper: 'letter', siteText: '', reader });
      expect(pages.slice(0, 2).map(({ title }) => title)).toEqual(['1 Cover', '2 Plan']);
      expect(faults(pages)).toEqual([]);
      expect(wordsOf(pages).replaceAll(' | ', ' ')).toContain(cautions[0]?.text);
      return pages.map(({ title }) => title.toLowerCase()).join(' | ');
    };
    expect(of('crew')).toContain('tapes and holes');
    expect(of('crew')).not.toContain('rules of towns');
    expect(of('office')).toContain('openings');
    expect(of('office')).not.toContain('tapes and holes');
    expect(of('rep')).not.toContain('load list');
    expect(of('rep')).toMatch(/page for the customer$/);
  });
});
