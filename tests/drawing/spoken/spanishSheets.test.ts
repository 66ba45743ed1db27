import { describe, expect, it, vi } from 'vitest';
import type { Language } from '../../../src/phrases/languages.ts';

/** What draws, in a realm of its own that speaks a language from before it is loaded. */
const drawerIn = async (language: Language) => {
  vi.resetModules();
  const { speak } = await import('../../../src/phrases/speak.ts');
  await speak(language);
  return {
    ...(await import('../sampleYards.ts')),
    ...(await import('../../../src/drawing/sheet/sheetSet.ts')),
    ...(await import('../../../src/drawing/tables/sheetTables.ts')),
    ...(await import('../../../src/drawing/sheet/pageAtoms.ts')),
    ...(await import('../../../src/exporters/svg/toSvg.ts')),
    ...(await import('../textsOf.ts')),
    ...(await import('../sheet/sheetFigures.ts')),
  };
};

const english = await drawerIn('en');
const spanish = await drawerIn('es');
const yards = spanish.sampleYards;

/** The figures of a text in their order. */
const figuresOf = (text: string): readonly string[] => text.match(/\d[\d./,-]*\d|\d/g) ?? [];

/** The figures of every cell of every table of a yard. */
const figuresIn = ({ sampleYards, sheetTables, sheetTableNames }: typeof english, name: string) => {
  const yard = sampleYards.find((one) => one.name === name);
  if (yard === undefined) throw new Error(`expected a yard ${name}`);
  return sheetTableNames.map((table) => {
    const { tables } = sheetTables(table, yard.site, yard.layout);
    return { table, cells: tables.map(({ rows }) => rows.map((row) => row.map(figuresOf))) };
  });
};

/** As far as a text that was cut is compared with another. */
const beginning = 8;

/** How the texts of a set begin that were cut for want of room. */
const cutIn = (
  { sampleYards, sheetSet, pageAtoms, textsOf }: typeof english,
  name: string,
  paper: 'letter' | 'a4',
): string[] => {
  const yard = sampleYards.find((one) => one.name === name);
  if (yard === undefined) throw new Error(`expected a yard ${name}`);
  const pages = sheetSet(yard.site, yard.layout, { paper, siteText: '' });
  const texts = pages.flatMap((page) => textsOf(pageAtoms(page)).map(({ text }) => text));
  return [
    ...new Set(texts.filter((text) => text.endsWith('…')).map((text) => text.slice(0, beginning))),
  ];
};

describe('sheets in Spanish', { timeout: 240_000 }, () => {
  it.each(yards)(
    '[A11] of $name have no text on another, on a line of a plan or outside the frame',
    ({ site, layout }) => {
      for (const paper of ['letter', 'a4'] as const) {
        const figures = spanish.sheetFigures(
          spanish.sheetSet(site, layout, { paper, siteText: '' }),
        );
        expect(figures).toMatchObject({ overlaps: [], outside: [] });
        expect(figures.onPlans).toEqual({});
        expect(figures.onOthers).toEqual({});
      }
    },
  );

  it.each(yards)('[A14] of $name have no text cut that an English one has whole', ({ name }) => {
    for (const paper of ['letter', 'a4'] as const) {
      const known = cutIn(english, name, paper);
      expect(cutIn(spanish, name, paper).filter((text) => !known.includes(text))).toEqual([]);
    }
  });

  it.each(yards)(
    '[A12] of $name have the figures of the English ones, cell by cell',
    ({ name }) => {
      const own = figuresIn(spanish, name);
      expect(own.flat().length).toBeGreaterThan(0);
      expect(own).toEqual(figuresIn(english, name));
    },
  );

  it('[A13] say in which language they are, English ones as ever', () => {
    const svg = ({ sampleYards, sheetSet, toSvg }: typeof english) => {
      const [yard] = sampleYards;
      const options = { paper: 'letter', siteText: '' } as const;
      const page = yard && sheetSet(yard.site, yard.layout, options)[0];
      return page === undefined ? '' : toSvg(page);
    };
    expect(svg(spanish)).toMatch(/^<svg [^>]*lang="es"/);
    expect(svg(spanish)).toContain('Portada');
    expect(svg(english)).not.toContain('lang=');
    expect(svg(english)).toContain('Cover');
  });
});
