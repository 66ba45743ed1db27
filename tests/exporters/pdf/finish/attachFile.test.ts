import { describe, expect, it } from 'vitest';
import type { PdfInfo } from '../../../../src/exporters/pdf/pdfInfo.ts';
import { toPdf } from '../../../../src/exporters/pdf/toPdf.ts';
import type { SiteFile } from '../../../../src/site/siteFile.ts';
import { scene } from '../../scene.ts';
import { hostileNames } from '../hostileNames.ts';
import { plainPdf } from '../plainPdf.ts';
import { popplerFiles, qpdfCheck } from '../poppler.ts';
import { sheetFonts } from '../sheetFonts.ts';
import { withPdf } from '../withPdf.ts';

const info: PdfInfo = {
  title: 'Back yard',
  author: '',
  subject: 'Crew sheet',
  keywords: [],
  day: 'D:20260309',
  id: '0123456789abcdef0123456789abcdef',
};
const made = (file: SiteFile, day: string | null = 'D:20260309') =>
  toPdf([scene], sheetFonts, { ...info, day }, file);
const file = { name: 'back-yard.site.json', text: '{"name": "Größe \u{1F3E1}"}\n' };

interface Held {
  readonly filename: string;
  readonly content: Uint8Array;
}

const heldIn = (bytes: Uint8Array): Promise<Held[]> =>
  withPdf(bytes, async (pdf) => Object.values((await pdf.getAttachments()) ?? {}) as Held[]);

describe('attachFile', () => {
  it('[X55] the file is read back as it was, by two readers', async () => {
    const [held, ...more] = await heldIn(await made(file));
    expect(more).toEqual([]);
    expect(held?.filename).toBe(file.name);
    expect(new TextDecoder().decode(held?.content)).toBe(file.text);
    expect(popplerFiles(await made(file))).toEqual({ [file.name]: file.text });
  });

  it('[X55] it is JSON, what the pages come from, and bears the day of the site or none', async () => {
    const text = await plainPdf(await made(file));
    const size = new TextEncoder().encode(file.text).length;
    expect(text).toMatch(/\/Subtype \/application#2Fjson/);
    expect(text).toMatch(/\/AFRelationship \/Source/);
    expect(text).toMatch(new RegExp(`/Size ${size}\\s+/ModDate \\(D:20260309\\)`));
    expect(text).toMatch(/\/AF \[ \d+ 0 R \]/);
    expect(await plainPdf(await made(file, null))).not.toMatch(/ModDate|CreationDate/);
  });

  it('[X56] files of every name come back, without what would lead into a folder', async () => {
    for (const [name, shown] of hostileNames) {
      const bytes = await made({ name: `${name}.site.json`, text: file.text });
      expect(qpdfCheck(bytes)).toContain('No syntax or stream encoding errors found');
      const [held] = await heldIn(bytes);
      expect(held?.filename.replace(/ +(?=\.site)/, '')).toBe(
        `${shown.replace(/[\\/]/g, '_')}.site.json`,
      );
      expect(new TextDecoder().decode(held?.content)).toBe(file.text);
    }
  });
});
