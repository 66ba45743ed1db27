import { describe, expect, it } from 'vitest';
import { pageAtoms } from '../../../src/drawing/sheet/pageAtoms.ts';
import { sheetSet } from '../../../src/drawing/sheet/sheetSet.ts';
import type { PdfInfo } from '../../../src/exporters/pdf/pdfInfo.ts';
import { toPdf } from '../../../src/exporters/pdf/toPdf.ts';
import { siteFile } from '../../../src/site/siteFile.ts';
import { sampleYards } from '../../drawing/sampleYards.ts';
import { textsOf } from '../../drawing/textsOf.ts';
import { readPdf } from './readPdf.ts';
import { sheetFonts } from './sheetFonts.ts';

const info: PdfInfo = {
  title: 'Sample',
  author: '',
  subject: 'Crew sheet',
  keywords: ['fence'],
  day: 'D:20260309',
  id: '0123456789abcdef0123456789abcdef',
};

const wordsOf = (texts: readonly string[]): string[] =>
  texts
    .flatMap((text) => text.split(/\s+/))
    .filter((word) => word !== '')
    .toSorted();

describe.each(sampleYards)('the PDF of $name', ({ site, layout, text }) => {
  const pages = sheetSet(site, layout, { paper: 'tabloid', siteText: text });
  const made = () => toPdf(pages, sheetFonts, info, siteFile(site));

  it('[X1] holds every word of every page once, and no other', async () => {
    const { pages: read } = await readPdf(await made());
    expect(read).toHaveLength(pages.length);
    pages.forEach((page, n) => {
      const { paper } = page;
      const found = read[n];
      expect(wordsOf(found?.texts ?? [])).toEqual(
        wordsOf(textsOf(pageAtoms(page)).map((own) => own.text)),
      );
      expect(found?.width).toBeCloseTo(paper.width, 3);
      expect(found?.height).toBeCloseTo(paper.height, 3);
    });
  });

  it('[X2] is the same to the byte when it is made again', async () => {
    expect(Buffer.from(await made()).equals(Buffer.from(await made()))).toBe(true);
  });
});
