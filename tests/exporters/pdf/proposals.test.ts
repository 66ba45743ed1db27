import { describe, expect, it } from 'vitest';
import { pageAtoms } from '../../../src/drawing/sheet/pageAtoms.ts';
import { proposal } from '../../../src/drawing/proposal/proposal.ts';
import { noPriceList } from '../../../src/engine/price/customerPrice.ts';
import { pdfInfoFor } from '../../../src/exporters/pdf/pdfInfoFor.ts';
import { toPdf } from '../../../src/exporters/pdf/toPdf.ts';
import { checkValue } from '../../../src/site/checkValue.ts';
import { sampleYards } from '../../drawing/sampleYards.ts';
import { textsOf } from '../../drawing/textsOf.ts';
import { plainPdf } from './plainPdf.ts';
import { readPdf } from './readPdf.ts';
import { sheetFonts } from './sheetFonts.ts';

const wordsOf = (texts: readonly string[]): string[] =>
  texts
    .flatMap((text) => text.split(/\s+/))
    .filter((word) => word !== '')
    .toSorted();

describe.each(sampleYards)('the PDF of the proposal of $name', ({ site, layout, text }) => {
  it('[X42] has every word of its one page, the metadata of a sheet, and no file in it', async () => {
    const prices = { price: noPriceList, others: [] };
    const page = proposal(site, layout, { paper: 'a4', siteText: text, prices });
    const info = pdfInfoFor(site, { sort: 'Proposal', siteText: text, file: null });
    const bytes = await toPdf([page], sheetFonts, info, null);
    const { pages, info: told, files } = await readPdf(bytes);
    expect(pages.map(({ texts }) => wordsOf(texts))).toEqual([
      wordsOf(textsOf(pageAtoms(page)).map((own) => own.text)),
    ]);
    expect(told).toMatchObject({
      Title: site.job.name,
      ...(site.job.drawnBy === '' ? {} : { Author: site.job.drawnBy }),
      Subject: expect.stringMatching(
        new RegExp(`^Proposal(?:, revision .+)?, check value ${checkValue(text)}$`),
      ),
    });
    expect(files).toEqual([]);
    // written out, so that nothing hides in what is packed
    expect(await plainPdf(bytes)).not.toMatch(/EmbeddedFile|\/AF\b|Filespec/);
  });
});
