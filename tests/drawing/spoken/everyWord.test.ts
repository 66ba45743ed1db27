import { describe, expect, it } from 'vitest';
import { speakPseudo, unphrased } from './pseudoLanguage.ts';
import { corpusOf, textsIn } from './wordsOfTexts.ts';

// texts of tables are made when they are loaded
speakPseudo();
const { sampleYards } = await import('../sampleYards.ts');
const { textsOf } = await import('../textsOf.ts');
const { orderSheet } = await import('../../../src/drawing/orders/orderSheet.ts');
const { proposal } = await import('../../../src/drawing/proposal/proposal.ts');
const { pageAtoms } = await import('../../../src/drawing/sheet/pageAtoms.ts');
const { usualPaper } = await import('../../../src/drawing/sheet/papers.ts');
const { sheetSet } = await import('../../../src/drawing/sheet/sheetSet.ts');
const { checkValue } = await import('../../../src/site/checkValue.ts');

/** The same in every language: units, points of the compass, the names of the program and of what is published. */
const unsaid = corpusOf([
  'mm',
  'ft',
  'in',
  'NE',
  'NW',
  'SE',
  'SW',
  'Lathline',
  'CFR',
  'APWA Uniform Color Code for marking underground utilities',
]);

describe('pages in a language that marks every phrase', { timeout: 240_000 }, () => {
  it.each(sampleYards)(
    '[A10] every word of the pages of $name that no person typed is a phrase',
    ({ site, layout, text }) => {
      const paper = usualPaper(site.lengths.system);
      const prices = { price: { kind: 'open', missing: [] }, others: [] } as const;
      const pages = [
        ...sheetSet(site, layout, { paper, siteText: text }),
        ...orderSheet(site, layout, { paper, siteText: text }),
        proposal(site, layout, { paper, siteText: text, prices }),
      ];
      const tags = [...layout.posts.values()].map(({ tag }) => tag);
      const typed = corpusOf([...textsIn(site), ...tags, checkValue(text)]);
      const words = pages.flatMap((page) =>
        textsOf(pageAtoms(page)).flatMap((letters) => unphrased(letters.text)),
      );
      expect(words.length).toBeGreaterThan(0);
      expect(
        [...new Set(words)].filter((run) => !typed.includes(run) && !unsaid.includes(run)),
      ).toEqual([]);
    },
  );

  it('[A10] finds a word that is in no phrase', () => {
    expect(unphrased('«Post» A of 3')).toEqual(['a of']);
    expect(unphrased('Back yard: «gate» «po')).toEqual(['back yard']);
    expect(corpusOf(['Back yard']).includes('back yard')).toBe(true);
  });
});
