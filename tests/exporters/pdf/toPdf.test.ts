import { OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import type { PdfInfo } from '../../../src/exporters/pdf/pdfAssets.ts';
import { toPdf } from '../../../src/exporters/pdf/toPdf.ts';
import { scene } from '../scene.ts';
import { readPdf } from './readPdf.ts';
import { sheetFonts } from './sheetFonts.ts';

const info: PdfInfo = {
  title: 'Back yard',
  author: 'A. Rep',
  subject: 'Crew sheet',
  created: '2026-03-09T14:05:00Z',
  id: '0123456789abcdef0123456789abcdef',
};
const wide = { ...scene, paper: { label: 'Tabloid', width: 17, height: 11 } };
const made = () => toPdf([scene, wide], sheetFonts, info);

describe('toPdf', () => {
  it('[X1] every text can be read back', async () => {
    const { pages } = await readPdf(made());
    for (const { texts } of pages) {
      expect(texts).toEqual(['Hold 9\'-10 1/2"', 'Größe ≤ 3 & <b>', 'Lane side']);
    }
  });

  it('[X1] says what it is and when it was made', async () => {
    const { info: said } = await readPdf(made());
    expect(said).toMatchObject({ Title: 'Back yard', Author: 'A. Rep', Subject: 'Crew sheet' });
    expect(said['CreationDate']).toBe("D:20260309140500+00'00'");
  });

  it('[X2] is the same to the byte when it is made again', () => {
    expect(Buffer.from(made()).equals(Buffer.from(made()))).toBe(true);
  });

  it('[X3] each page has its own size, and its clip and fill', async () => {
    const { pages } = await readPdf(made());
    expect(pages.map(({ width, height }) => [width, height])).toEqual([
      [8.5, 11],
      [17, 11],
    ]);
    for (const { operators } of pages) {
      expect(operators.filter((op) => op === OPS.eoClip)).toHaveLength(1);
      expect(operators).toContain(OPS.setGState);
    }
  });

  it('refuses no pages and a moment it cannot read, in one line', () => {
    expect(() => toPdf([], sheetFonts, info)).toThrow(/expected at least one page/);
    expect(() => toPdf([scene], sheetFonts, { ...info, created: 'today' })).toThrow(
      /expected a moment in UTC .* got “today”/,
    );
  });
});
