import { checkValue } from '../../site/checkValue.ts';
import type { Site } from '../../site/site.ts';
import type { PdfInfo } from './pdfAssets.ts';

/**
 * What the PDF of a crew sheet, or of another sort of set, says of itself. The id follows from the
 * sort, the saved text of the site and the moment alone, so that one state of a site made at one
 * moment gives one file wherever it is made.
 * @param created a moment in UTC such as `2026-03-09T14:05:00Z`.
 */
export const pdfInfoFor = (
  { job }: Site,
  siteText: string,
  created: string,
  sort = 'Crew sheet',
): PdfInfo => {
  const check = checkValue(siteText);
  const parts = ['1', '2', '3'].map((part) => checkValue(`${part} ${sort} ${created} ${siteText}`));
  const revision = job.revision.trim() === '' ? '' : `, revision ${job.revision.trim()}`;
  return {
    title: job.name.trim() || 'Site without a name',
    author: job.drawnBy.trim(),
    subject: `${sort}${revision}, check value ${check}`,
    created,
    id: [check, ...parts].join('').toLowerCase(),
  };
};
