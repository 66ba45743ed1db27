import { describe, expect, it } from 'vitest';
import type { Text } from '../../../src/drawing/atom.ts';
import { pageAtoms } from '../../../src/drawing/sheet/pageAtoms.ts';
import { sheetSet } from '../../../src/drawing/sheet/sheetSet.ts';
import { pdfInfoFor } from '../../../src/exporters/pdf/pdfInfoFor.ts';
import { toPdf } from '../../../src/exporters/pdf/toPdf.ts';
import { siteFile } from '../../../src/site/siteFile.ts';
import { sampleYards } from '../../drawing/sampleYards.ts';
import { textsOf } from '../../drawing/textsOf.ts';
import {
  popplerFiles,
  popplerFonts,
  popplerInfo,
  popplerPages,
  popplerStructure,
  qpdfCheck,
} from './poppler.ts';
import { readPdf } from './readPdf.ts';
import { sheetFonts } from './sheetFonts.ts';
import { withPdf } from './withPdf.ts';

const squeezed = (text: string): string => text.replace(/\s/g, '');
const lettersOf = (text: string): string => [...squeezed(text)].toSorted().join('');
const isLevel = ({ angle }: Text): boolean => angle === 0;

describe.each(sampleYards)('the PDF of $name, read by others', { timeout: 60_000 }, (yard) => {
  const { site, layout, text } = yard;
  const pages = sheetSet(site, layout, { paper: 'letter', siteText: text });
  const file = siteFile(site);
  const info = pdfInfoFor(site, { sort: 'Crew sheet', siteText: text, file });
  const made = toPdf(pages, sheetFonts, info, file);
  const written = pages.map((page) => textsOf(pageAtoms(page)));
  const wordsOf = (texts: readonly Text[]): string => texts.map((own) => own.text).join(' ');

  it('[X1] qpdf finds no fault; every font is embedded, cut down and can be read back', async () => {
    expect(qpdfCheck(await made)).toContain('No syntax or stream encoding errors found');
    const fonts = popplerFonts(await made);
    expect(fonts).toHaveLength(2);
    for (const font of fonts) expect(font).toMatch(/^[A-Z]{6}\+Barlow-\w+ .* yes yes yes /);
  });

  it('[X1] poppler and pdf.js read every letter of every page', async () => {
    const read = popplerPages(await made);
    expect(read.map(lettersOf)).toEqual(written.map((texts) => lettersOf(wordsOf(texts))));
    const { pages: shown } = await readPdf(await made);
    expect(shown.map(({ texts }) => squeezed(texts.join('')))).toEqual(
      written.map((texts) => squeezed(wordsOf(texts))),
    );
  });

  it('[X54] pages of lists read row by row, their title block last', async () => {
    const read = popplerPages(await made);
    const lists = written.flatMap((texts, n) => (texts.every(isLevel) ? [n] : []));
    expect(lists.length).toBeGreaterThan(0);
    for (const n of lists)
      expect(squeezed(read[n] ?? '')).toBe(squeezed(wordsOf(written[n] ?? [])));
    for (const [n, page] of read.entries()) {
      expect(page.slice(-400)).toContain(`Sheet ${n + 1} of ${read.length}`);
    }
  });

  // poppler takes its time over the structure of a long set
  if (pages.length < 10) {
    it('[X54] the structure tells every text once, in this order', async () => {
      const told = popplerStructure(await made);
      const texts = [...told.matchAll(/^ *"(.*)"$/gm)].map(([, own = '']) => own);
      expect(squeezed(texts.join(''))).toBe(squeezed(written.map(wordsOf).join('')));
      expect(told.match(/^ {2}Sect /gm)).toHaveLength(pages.length);
      expect(popplerInfo(await made)).toMatchObject({ Tagged: 'yes', Suspects: 'no' });
    });
  }

  it('[X55] poppler takes the very site file out', async () => {
    expect(popplerFiles(await made)).toEqual({ [file.name]: file.text });
  });

  it('[X52] its bookmarks are its pages, and every link leads where the page says', async () => {
    await withPdf(await made, async (pdf) => {
      const sheets = await Promise.all(pages.map((_, n) => pdf.getPage(n + 1)));
      const outline = (await pdf.getOutline()) as { title: string; dest: unknown[] }[];
      expect(outline.map(({ title, dest }) => [title, dest[0]])).toEqual(
        pages.map(({ title }, n) => [title, sheets[n]?.ref]),
      );
      for (const [n, { links, paper }] of pages.entries()) {
        const found = (await sheets[n]?.getAnnotations()) as { rect: number[]; dest: unknown[] }[];
        expect(found.map(({ dest }) => dest[0])).toEqual(
          links.map(({ page }) => sheets[page - 1]?.ref),
        );
        for (const [at, { rect }] of links.entries()) {
          const { x, y, width, height } = rect;
          const corners = [x, paper.height - y - height, x + width, paper.height - y];
          corners.forEach((inch, side) => {
            expect((found[at]?.rect[side] ?? NaN) / 72).toBeCloseTo(inch, 4);
          });
        }
      }
    });
    expect(pages.flatMap(({ links }) => links).length).toBeGreaterThan(0);
  });
});
