import { jsPDF } from 'jspdf';
import type { Page } from '../../drawing/sheet/page.ts';
import type { SiteFile } from '../../site/siteFile.ts';
import { faces } from './faces.ts';
import { finishPdf } from './finish/finishPdf.ts';
import type { PdfAssets } from './pdfAssets.ts';
import type { PdfInfo } from './pdfInfo.ts';
import { writePages } from './writePages.ts';

/** Bytes as the string of characters that the PDF library takes for a file. */
const asBinary = (bytes: Uint8Array): string => {
  const parts: string[] = [];
  for (let at = 0; at < bytes.length; at += 0x2000) {
    parts.push(String.fromCharCode(...bytes.subarray(at, at + 0x2000)));
  }
  return parts.join('');
};

/** Fonts as such strings: a program has the same ones for every file. */
const binaries = new WeakMap<Uint8Array, string>();

const binaryOf = (font: Uint8Array): string => {
  const binary = binaries.get(font) ?? asBinary(font);
  binaries.set(font, binary);
  return binary;
};

const formatOf = ({ paper }: Page) => ({
  size: [paper.width, paper.height] as [number, number],
  orientation: paper.width > paper.height ? ('landscape' as const) : ('portrait' as const),
});

const embed = (doc: jsPDF, assets: PdfAssets): void => {
  for (const weight of ['regular', 'bold'] as const) {
    const face = faces[weight];
    doc.addFileToVFS(`${face}.ttf`, binaryOf(assets[weight]));
    doc.addFont(`${face}.ttf`, face, 'normal');
  }
};

const emptyPdf = (first: Page): jsPDF => {
  const { size, orientation } = formatOf(first);
  return new jsPDF({
    unit: 'in',
    format: size,
    orientation,
    compress: true,
    putOnlyUsedFonts: true,
    floatPrecision: 5,
  });
};

/**
 * Pages as a vector PDF with its fonts embedded, each page of its own size. The same pages, fonts,
 * `info` and file to attach give the same bytes. At least one page is needed.
 */
export const toPdf = async (
  pages: readonly Page[],
  assets: PdfAssets,
  info: PdfInfo,
  file: SiteFile | null,
): Promise<Uint8Array> => {
  const [first] = pages;
  if (first === undefined) throw new RangeError('PDF: expected at least one page');
  const doc = emptyPdf(first);
  embed(doc, assets);
  doc.setFileId(info.id.toUpperCase());
  const written = writePages(doc, pages, (page) => {
    const { size, orientation } = formatOf(page);
    doc.addPage(size, orientation);
  });
  return finishPdf(doc.output('arraybuffer'), { pages, written, info, file });
};
