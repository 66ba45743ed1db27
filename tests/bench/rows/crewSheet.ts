import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { sheetSet } from '../../../src/drawing/sheet/sheetSet.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { pdfInfoFor } from '../../../src/exporters/pdf/pdfInfoFor.ts';
import { toPdf } from '../../../src/exporters/pdf/toPdf.ts';
import { openSite } from '../../../src/site/openSite.ts';
import { sheetText } from '../../../src/site/sheetText.ts';
import { siteFile } from '../../../src/site/siteFile.ts';
import { sheetFonts } from '../../exporters/pdf/sheetFonts.ts';
import { measuredLater } from '../measuredLater.ts';
import type { Pace, Row } from '../row.ts';
import { writtenByPdfKit } from '../writtenByPdfKit.ts';

const sample = join(import.meta.dirname, '../../../sample-sites/long-boundary.site.json');

/** The sample with 100 legs: its crew sheet drawn, written, and written by the reference. */
const worksOf = () => {
  const opened = openSite(readFileSync(sample, 'utf8'));
  if (!opened.ok) throw new Error(opened.reason);
  const site = opened.value;
  const layout = layOutSite(site);
  const siteText = sheetText(site);
  const file = siteFile(site);
  const info = pdfInfoFor(site, { sort: 'Crew sheet', siteText, file });
  const draw = () => sheetSet(site, layout, { paper: 'letter', siteText });
  const pages = draw();
  return {
    pages,
    written: () => toPdf(pages, sheetFonts, info, file),
    drawnAndWritten: () => toPdf(draw(), sheetFonts, info, file),
    reference: () => writtenByPdfKit(pages, sheetFonts),
  };
};

let made: ReturnType<typeof worksOf> | null = null;

/** The same for every row. */
const works = () => (made ??= worksOf());

const against = 'the same atoms written by pdfkit';

const rowOf = (work: string, own: 'written' | 'drawnAndWritten'): Row => ({
  work,
  against,
  bar: 1,
  run: async ({ quick }: Pace) => {
    const { pages, reference, [own]: ours } = works();
    const how = { rounds: quick ? 2 : 8, warm: quick ? 0 : 2 };
    return measuredLater(ours, reference, { ...how, note: `${pages.length} pages` });
  },
});

/** The crew sheet of the sample with 100 legs, from its atoms and from its layout to the bytes of its PDF. */
export const crewSheet: readonly Row[] = [
  rowOf('crew sheet of the 100-leg sample, written', 'written'),
  {
    ...rowOf('crew sheet of the 100-leg sample, drawn and written', 'drawnAndWritten'),
    only: 'whole runs',
  },
];
