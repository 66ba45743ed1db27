import { describe, expect, it } from 'vitest';
import { cover } from '../../../../src/drawing/sheet/cover/cover.ts';
import { indexEntries, sheetIndex } from '../../../../src/drawing/sheet/cover/sheetIndex.ts';
import { postRows } from '../../../../src/drawing/tables/postRows.ts';
import { pageAtoms } from '../../../../src/drawing/sheet/pageAtoms.ts';
import { laid } from '../../../../src/drawing/sheet/papers.ts';
import { sheetFrame } from '../../../../src/drawing/sheet/sheetFrame.ts';
import { sampleYards } from '../../sampleYards.ts';
import { overlapsOf, textsOf } from '../../textsOf.ts';

const named = (name: string) => {
  const yard = sampleYards.find((own) => own.name === name);
  if (yard === undefined) throw new Error(`expected ${name}`);
  return yard;
};

describe('the cover', () => {
  it('[D140] puts sheets that follow one another under one name together', () => {
    expect(indexEntries(['Plan', 'Holes', 'Holes', 'Load', 'Holes'], 2)).toEqual([
      { name: 'Plan', from: 2, to: 2 },
      { name: 'Holes', from: 3, to: 4 },
      { name: 'Load', from: 5, to: 5 },
      { name: 'Holes', from: 6, to: 6 },
    ]);
    expect(indexEntries([], 2)).toEqual([]);
  });

  it('[D140] says how many sheets have no room in the index', () => {
    const entries = indexEntries(['A', 'B', 'B', 'C', 'D', 'D', 'D'], 2);
    const { atoms, height, links } = sheetIndex(entries, 3, 0.85);
    expect(textsOf(atoms).map(({ text }) => text)).toEqual([
      'Sheets',
      '2',
      'A',
      '3–4',
      'B',
      'and 4 more',
    ]);
    expect(height).toBeLessThanOrEqual(0.85);
    expect(links.map(({ page }) => page)).toEqual([2, 3]);
  });

  it.each(['letter', 'a4', 'tabloid'] as const)(
    '[D140] has job, counts, flags and sheets on %s',
    (paper) => {
      for (const orientation of ['portrait', 'landscape'] as const) {
        const { site, layout } = named('corner-lot');
        const { content } = sheetFrame(laid(paper, orientation));
        const entries = indexEntries(['Plan', 'Openings'], 2);
        const front = cover(site, layout, { reader: 'crew', entries, flags: 9 }, content);
        const atoms = pageAtoms(front);
        const words = textsOf(atoms).map(({ text }) => text);
        expect(overlapsOf(atoms)).toEqual([]);
        for (const word of [
          site.job.name,
          site.job.customer,
          'Set for the crew',
          'To be built',
          'Openings',
        ])
          expect(words).toContain(word);
        expect(words.join(' ')).toContain('2 cautions. All are listed on sheet 9.');
        expect(front.links).toHaveLength(2);
      }
    },
  );

  it('[D140] counts every post once', () => {
    for (const { site, layout } of sampleYards) {
      const rows = postRows(layout, site.lengths);
      const sum = rows.reduce((so, [, count]) => so + Number(count), 0);
      expect(sum).toBe(layout.posts.size);
    }
  });

  it.each(['letter', 'a4', 'tabloid'] as const)(
    '[D140] keeps to its frame on %s however much there is to tell',
    (paper) => {
      const { site, layout } = named('plant-nursery');
      const { flags: told } = named('corner-lot').layout;
      const [flag] = told;
      if (flag === undefined) throw new Error('expected a flag');
      const many = Array.from({ length: 9 }, () => ({ ...flag, level: 'stop' as const }));
      const names = Array.from({ length: 60 }, (_, n) => `Part ${n}`);
      for (const orientation of ['portrait', 'landscape'] as const) {
        const { content } = sheetFrame(laid(paper, orientation));
        const of = { reader: null, entries: indexEntries(names, 2), flags: 40 };
        const front = cover(site, { ...layout, flags: many }, of, content);
        const low = textsOf(pageAtoms(front)).map(({ at }) => at.y);
        expect(Math.max(...low)).toBeLessThanOrEqual(content.y + content.height);
        expect(overlapsOf(pageAtoms(front))).toEqual([]);
      }
    },
  );
});
