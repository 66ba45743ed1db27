import { describe, expect, it } from 'vitest';
import { pdfInfoFor, type PdfSet } from '../../../src/exporters/pdf/pdfInfoFor.ts';
import { checkValue } from '../../../src/site/checkValue.ts';
import { emptySite } from '../../../src/site/emptySite.ts';
import { saveSite } from '../../../src/site/saveSite.ts';
import type { Site } from '../../../src/site/site.ts';
import { siteFile } from '../../../src/site/siteFile.ts';

const empty = emptySite({ specs: {}, hardware: {} });
const job = { ...empty.job, name: 'Yard', drawnBy: 'Rep', date: '2026-03-09', revision: 'B' };
const site: Site = { ...empty, job };
const infoOf = (of: Site, more: Partial<PdfSet> = {}) =>
  pdfInfoFor(of, { sort: 'Crew sheet', siteText: saveSite(of), file: null, ...more });

describe('pdfInfoFor', () => {
  it('[X50] names the job, who drew it, its revision, its check value and its day', () => {
    const check = checkValue(saveSite(site));
    expect(infoOf(site)).toMatchObject({
      title: 'Yard',
      author: 'Rep',
      subject: `Crew sheet, revision B, check value ${check}`,
      keywords: ['fence', 'gates', 'crew sheet', check],
      day: 'D:20260309',
    });
    expect(infoOf(empty)).toMatchObject({ title: 'Site without a name', day: null });
    expect(infoOf(empty).subject).toMatch(/^Crew sheet, check value [0-9A-F]{8}$/);
  });

  it('[X2] gives one id for one site, another for any other site, sort or file', () => {
    const { id } = infoOf(site);
    expect(id).toMatch(/^[0-9a-f]{32}$/);
    expect(infoOf(structuredClone(site)).id).toBe(id);
    expect(infoOf(empty).id).not.toBe(id);
    const order = infoOf(site, { sort: 'Order sheet' });
    expect(order.subject).toMatch(/^Order sheet, revision B/);
    expect(order.id).not.toBe(id);
    const other = { ...siteFile(site), text: `${saveSite(site)} ` };
    expect(infoOf(site, { file: other }).id).not.toBe(id);
  });
});
