import type { Page } from '../drawing/sheet/page.ts';
import { pdfInfoFor, type PdfSet } from '../exporters/pdf/pdfInfoFor.ts';
import { toPdf } from '../exporters/pdf/toPdf.ts';
import { toSvg } from '../exporters/svg/toSvg.ts';
import type { Site } from '../site/site.ts';
import { read, type Parsed } from '../units/parsed.ts';
import type { Io } from './io.ts';
import type { PageOrder } from './pageOrder.ts';

/** `yard.svg` for one page, `yard-1.svg`, `yard-2.svg` … for several: an SVG holds one page. */
const svgNames = (out: string, count: number): string[] =>
  Array.from({ length: count }, (_, n) =>
    count === 1 ? out : out.replace(/(\.[^.]*)$/, `-${n + 1}$1`),
  );

/** Pages of a site to be written, of which sort, the saved text that they are of, the file that goes with them. */
interface Written extends PdfSet {
  readonly pages: readonly Page[];
  readonly site: Site;
}

/** Writes pages as one PDF or an SVG a page; gives the names of the files. */
export const writePages = async (
  { out, ending }: PageOrder,
  { pages, site, ...set }: Written,
  io: Io,
): Promise<Parsed<readonly string[]>> => {
  if (ending === 'pdf') {
    const fonts = { regular: await io.readFont('regular'), bold: await io.readFont('bold') };
    const bytes = await toPdf(pages, fonts, pdfInfoFor(site, set), set.file);
    const file = await io.writeFile(out, bytes);
    return file.ok ? read([file.value]) : file;
  }
  const files: string[] = [];
  for (const [n, name] of svgNames(out, pages.length).entries()) {
    const page = pages[n];
    if (page === undefined) continue;
    const file = await io.writeFile(name, toSvg(page));
    if (!file.ok) return file;
    files.push(file.value);
  }
  return read(files);
};
