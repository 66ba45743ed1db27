import type { Page } from '../drawing/sheet/page.ts';
import { pdfInfoFor, type PdfSet } from '../exporters/pdf/pdfInfoFor.ts';
import { toPdf } from '../exporters/pdf/toPdf.ts';
import { toPng } from '../exporters/png/toPng.ts';
import { toSvg } from '../exporters/svg/toSvg.ts';
import type { Site } from '../site/site.ts';
import { read, type Parsed } from '../units/parsed.ts';
import type { Io } from './io.ts';
import type { PageOrder } from './pageOrder.ts';

/** `yard.svg` for one page, `yard-1.svg`, `yard-2.svg` … for several: such a file holds one page. */
const pageNames = (out: string, count: number): string[] =>
  Array.from({ length: count }, (_, n) =>
    count === 1 ? out : out.replace(/(\.[^.]*)$/, `-${n + 1}$1`),
  );

/** Pages of a site to be written, of which sort, the saved text that they are of, the file that goes with them. */
interface Written extends PdfSet {
  readonly pages: readonly Page[];
  readonly site: Site;
}

const fontsOf = async (io: Io) => ({
  regular: await io.readFont('regular'),
  bold: await io.readFont('bold'),
});

/** What makes the file of one page; what a PNG is made with is read once for all of them. */
const makerOf = async (
  { ending, dpi }: PageOrder,
  io: Io,
): Promise<(page: Page) => Promise<Parsed<string | Uint8Array>>> => {
  if (ending !== 'png') return async (page) => read(toSvg(page));
  const parts = { raster: await io.readRaster(), ...(await fontsOf(io)) };
  return (page) => toPng(page, parts, dpi);
};

/** Writes pages as one PDF, or an SVG or PNG a page; gives the names of the files. */
export const writePages = async (
  order: PageOrder,
  { pages, site, ...set }: Written,
  io: Io,
): Promise<Parsed<readonly string[]>> => {
  const { out, ending } = order;
  if (ending === 'pdf') {
    const bytes = await toPdf(pages, await fontsOf(io), pdfInfoFor(site, set), set.file);
    const file = await io.writeFile(out, bytes);
    return file.ok ? read([file.value]) : file;
  }
  const make = await makerOf(order, io);
  const files: string[] = [];
  for (const [n, name] of pageNames(out, pages.length).entries()) {
    const page = pages[n];
    if (page === undefined) continue;
    const content = await make(page);
    if (!content.ok) return content;
    const file = await io.writeFile(name, content.value);
    if (!file.ok) return file;
    files.push(file.value);
  }
  return read(files);
};
