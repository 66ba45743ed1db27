import { OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import type { PdfInfo } from '../../../src/exporters/pdf/pdfInfo.ts';
import { toPdf } from '../../../src/exporters/pdf/toPdf.ts';
import { scene } from '../scene.ts';
import { readPdf } from './readPdf.ts';
import { someInfo as info } from './someInfo.ts';
import { sheetFonts } from './sheetFonts.ts';

const wide = { ...scene, paper: { label: 'Tabloid', width: 17, height: 11 } };
const made = (more: Partial<PdfInfo> = {}) =>
  toPdf([scene, wide], sheetFonts, { ...info, ...more }, null);

describe('toPdf', () => {
  it('[X1] every text can be read back', async () => {
    const { pages } = await readPdf(await made());
    for (const { texts } of pages) {
      expect(texts).toEqual(['Hold 9\'-10 1/2"', 'Größe ≤ 3 & <b>', 'Lane side']);
    }
  });

  it('[X2] is the same to the byte when it is made again', async () => {
    expect(Buffer.from(await made()).equals(Buffer.from(await made()))).toBe(true);
  });

  it('[X3] each page has its own size, and its clip and fill', async () => {
    const { pages } = await readPdf(await made());
    expect(pages.map(({ width, height }) => [width, height])).toEqual([
      [8.5, 11],
      [17, 11],
    ]);
    for (const { operators } of pages) {
      expect(operators.filter((op) => op === OPS.eoClip)).toHaveLength(1);
      expect(operators).toContain(OPS.setGState);
    }
  });

  it('refuses no pages in one line', async () => {
    await expect(toPdf([], sheetFonts, info, null)).rejects.toThrow(/expected at least one page/);
  });
});
