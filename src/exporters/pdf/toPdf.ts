import { jsPDF } from 'jspdf';
import { palettes } from '../../drawing/palettes.ts';
import { pageAtoms } from '../../drawing/sheet/pageAtoms.ts';
import type { Page } from '../../drawing/sheet/page.ts';
import { paintAtom } from './paintAtom.ts';
import type { PdfAssets, PdfInfo } from './pdfAssets.ts';

/** Bytes as the string of characters that the PDF library takes for a file. */
const asBinary = (bytes: Uint8Array): string => {
  const parts: string[] = [];
  for (let at = 0; at < bytes.length; at += 0x2000) {
    parts.push(String.fromCharCode(...bytes.subarray(at, at + 0x2000)));
  }
  return parts.join('');
};

/** `2026-03-09T14:05:00Z` as a PDF writes a date. */
const pdfDate = (moment: string): string => {
  const found = /^(\d{4})-(\d\d)-(\d\d)T(\d\d):(\d\d):(\d\d)(?:\.\d+)?Z$/.exec(moment);
  if (found === null) {
    throw new RangeError(
      `PDF date: expected a moment in UTC such as 2026-03-09T14:05:00Z, got “${moment}”`,
    );
  }
  return `D:${found.slice(1).join('')}+00'00'`;
};

const formatOf = ({ paper }: Page) => ({
  size: [paper.width, paper.height] as [number, number],
  orientation: paper.width > paper.height ? ('landscape' as const) : ('portrait' as const),
});

const embed = (doc: jsPDF, assets: PdfAssets): void => {
  doc.addFileToVFS('Barlow-Regular.ttf', asBinary(assets.regular));
  doc.addFont('Barlow-Regular.ttf', 'Barlow', 'normal');
  doc.addFileToVFS('Barlow-SemiBold.ttf', asBinary(assets.bold));
  doc.addFont('Barlow-SemiBold.ttf', 'Barlow', 'bold');
};

/**
 * Pages as a vector PDF with its fonts embedded, each page of its own size. The same pages, fonts
 * and `info` give the same bytes. At least one page is needed.
 */
export const toPdf = (pages: readonly Page[], assets: PdfAssets, info: PdfInfo): Uint8Array => {
  const [first] = pages;
  if (first === undefined) throw new RangeError('PDF: expected at least one page');
  const { size, orientation } = formatOf(first);
  const doc = new jsPDF({
    unit: 'in',
    format: size,
    orientation,
    compress: true,
    putOnlyUsedFonts: true,
    floatPrecision: 3,
  });
  embed(doc, assets);
  doc.setFileId(info.id.toUpperCase());
  doc.setCreationDate(pdfDate(info.created));
  const { title, author, subject } = info;
  doc.setDocumentProperties({ title, author, subject, creator: 'Lathline' });
  pages.forEach((page, n) => {
    const format = formatOf(page);
    if (n > 0) doc.addPage(format.size, format.orientation);
    doc.setLineCap('butt');
    doc.setLineJoin('round');
    for (const atom of pageAtoms(page)) paintAtom(doc, atom, palettes.paper);
    doc.outline.add(null, page.title, { pageNumber: n + 1 });
  });
  return new Uint8Array(doc.output('arraybuffer'));
};
