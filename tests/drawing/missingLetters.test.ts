import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { missingLetters, missingLettersText } from '../../src/drawing/missingLetters.ts';
import { pageAtoms } from '../../src/drawing/sheet/pageAtoms.ts';
import { sheetSet } from '../../src/drawing/sheet/sheetSet.ts';
import { layOutSite } from '../../src/engine/layOutSite.ts';
import type { Site } from '../../src/site/site.ts';
import { sampleYards } from './sampleYards.ts';
import { textsOf } from './textsOf.ts';

const yard = sampleYards.find(({ name }) => name === 'corner-lot');
if (yard === undefined) throw new Error('expected the corner lot');
const { site } = yard;
const named = (name: string): Site => ({ ...site, job: { ...site.job, name } });

describe('letters that the sheet font lacks', () => {
  it('[D121] are told once each, with the part of the site that they stand in', () => {
    expect(missingLetters(site)).toEqual([]);
    expect(missingLetters(named('北門 北 Hof'))).toEqual([{ where: 'the job', letters: '北門' }]);
    expect(missingLettersText(site)).toBeNull();
    expect(missingLettersText(named('Ворота'))).toBe(
      'The font of the sheets has no letters for “Ворта” in the job: each is printed as ?',
    );
    const label = '門門門門門門門門門門門門門'
      .split('')
      .map((_, n) => String.fromCodePoint(0x9580 + n));
    expect(missingLettersText(named(label.join('')))).toContain('…” in the job');
  });

  it('[D121] where none is told no page has a ? that nobody typed', () => {
    const name = fc.string({ unit: 'grapheme', maxLength: 12 });
    fc.assert(
      fc.property(name, (text) => {
        const changed = named(text.replaceAll('?', ''));
        const pages = sheetSet(changed, layOutSite(changed), { paper: 'letter', siteText: '' });
        const words = pages
          .slice(0, 1)
          .flatMap((page) => textsOf(pageAtoms(page)).map((own) => own.text));
        expect(words.some((word) => word.includes('?'))).toBe(missingLetters(changed).length > 0);
      }),
      { numRuns: 30 },
    );
  });
});
