import { checkValue } from '../../site/checkValue.ts';
import type { Site } from '../../site/site.ts';
import type { SiteFile } from '../../site/siteFile.ts';
import { pdfDay } from './pdfDay.ts';
import type { PdfInfo } from './pdfInfo.ts';
import { phrase } from '../../phrases/phrase.ts';

/** A set of pages that becomes a PDF. */
export interface PdfSet {
  readonly sort: 'Crew sheet' | 'Order sheet' | 'Proposal';
  /** The saved text that the check value on its pages is of. */
  readonly siteText: string;
  /** The site file that is attached; null for a set that is for others. */
  readonly file: SiteFile | null;
}

const sorts: Readonly<Record<PdfSet['sort'], string>> = {
  'Crew sheet': phrase`Crew sheet`,
  'Order sheet': phrase`Order sheet`,
  Proposal: phrase`Proposal`,
};

/**
 * What the PDF of a set says of itself. All of it follows from the site and the sort: the day is that of
 * the job, and no clock is asked, so that one state of a site gives one file wherever and whenever it is made.
 */
export const pdfInfoFor = ({ job }: Site, { sort, siteText, file }: PdfSet): PdfInfo => {
  const check = checkValue(siteText);
  const whole = file?.text ?? siteText;
  const parts = ['1', '2', '3'].map((part) => checkValue(`${part} ${sort} ${whole}`));
  const called = sorts[sort];
  const revision = job.revision.trim();
  return {
    title: job.name.trim() || phrase`Site without a name`,
    author: job.drawnBy.trim(),
    subject:
      revision === ''
        ? phrase`${called}, check value ${check}`
        : phrase`${called}, revision ${revision}, check value ${check}`,
    keywords: [phrase`fence`, phrase`gates`, called.toLowerCase(), check],
    day: pdfDay(job.date),
    id: [check, ...parts].join('').toLowerCase(),
  };
};
