import { describe, expect, it } from 'vitest';
import { pdfInfoFor } from '../../../src/exporters/pdf/pdfInfoFor.ts';
import { checkValue } from '../../../src/site/checkValue.ts';
import { emptySite } from '../../../src/site/emptySite.ts';
import { saveSite } from '../../../src/site/saveSite.ts';
import type { Site } from '../../../src/site/site.ts';

const empty = emptySite({ specs: {}, hardware: {} });
const site: Site = { ...empty, job: { ...empty.job, name: 'Yard', drawnBy: 'Rep', revision: 'B' } };
const noon = '2026-03-09T12:00:00Z';
const infoOf = (of: Site, created = noon) => pdfInfoFor(of, saveSite(of), created);

describe('pdfInfoFor', () => {
  it('names the job, who drew it, its revision and its check value', () => {
    expect(infoOf(site)).toMatchObject({
      title: 'Yard',
      author: 'Rep',
      subject: `Crew sheet, revision B, check value ${checkValue(saveSite(site))}`,
      created: noon,
    });
    expect(infoOf(empty).title).toBe('Site without a name');
    expect(infoOf(empty).subject).toMatch(/^Crew sheet, check value [0-9A-F]{8}$/);
  });

  it('[X2] gives one id for one site at one moment, another for any other', () => {
    const { id } = infoOf(site);
    expect(id).toMatch(/^[0-9a-f]{32}$/);
    expect(infoOf(structuredClone(site)).id).toBe(id);
    expect(infoOf(empty).id).not.toBe(id);
    expect(infoOf(site, '2026-03-10T12:00:00Z').id).not.toBe(id);
    const order = pdfInfoFor(site, saveSite(site), noon, 'Order sheet');
    expect(order.subject).toMatch(/^Order sheet, revision B/);
    expect(order.id).not.toBe(id);
  });
});
