import fc from 'fast-check';
import { PDFDict, PDFDocument, PDFName } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { toPdf } from '../../../src/exporters/pdf/toPdf.ts';
import { siteInPdf } from '../../../src/importers/pdf/siteInPdf.ts';
import { mostHeld } from '../../../src/importers/pdf/heldFile.ts';
import { saveSite } from '../../../src/site/saveSite.ts';
import { siteFile, type SiteFile } from '../../../src/site/siteFile.ts';
import { sampleYards } from '../../drawing/sampleYards.ts';
import { hostileNames } from '../../exporters/pdf/hostileNames.ts';
import { byQpdf } from '../../exporters/pdf/poppler.ts';
import { sheetFonts } from '../../exporters/pdf/sheetFonts.ts';
import { scene } from '../../exporters/scene.ts';

const info = {
  title: 'Yard',
  author: '',
  subject: '',
  keywords: [],
  day: null,
  id: '0'.repeat(32),
};
const pdfWith = (file: SiteFile | null) => toPdf([scene], sheetFonts, info, file);
const [yard] = sampleYards;
if (yard === undefined) throw new Error('expected a sample');
const file = siteFile(yard.site);

/** A PDF to which another program attached files: their bytes by name. */
const attached = async (files: Readonly<Record<string, Uint8Array | string>>) => {
  const doc = await PDFDocument.load(await pdfWith(null));
  for (const [name, held] of Object.entries(files)) {
    await doc.attach(typeof held === 'string' ? new TextEncoder().encode(held) : held, name);
  }
  return doc.save();
};

const textIn = async (bytes: Uint8Array): Promise<string> => {
  const found = await siteInPdf(bytes);
  if (found.is !== 'site') return found.is;
  return found.site.ok ? saveSite(found.site.value) : found.site.reason;
};

describe('siteInPdf', () => {
  it.each(sampleYards)('[I50] $name comes back as it was', async ({ site }) => {
    expect(await textIn(await pdfWith(siteFile(site)))).toBe(saveSite(site));
  });

  it('[I50] jobs of every name come back', async () => {
    for (const [name] of hostileNames) {
      const short = [...name]
        .slice(0, 200)
        .join('')
        .replace(/\p{Cs}/gu, '?');
      const site = { ...yard.site, job: { ...yard.site.job, name: short } };
      expect(await textIn(await pdfWith(siteFile(site)))).toBe(saveSite(site));
    }
  });

  it.each([
    ['written anew, its objects packed', ['--object-streams=generate', '--recompress-flate']],
    ['written anew, nothing packed', ['--object-streams=disable', '--stream-data=uncompress']],
    ['made ready for the web', ['--linearize']],
  ])('[I50] a sheet that another program has %s', async (_, options) => {
    expect(await textIn(byQpdf(await pdfWith(file), options))).toBe(file.text);
  });

  it('[I51] nothing is in a PDF without a file, in one that is locked, and in what is no PDF', async () => {
    expect(await siteInPdf(await pdfWith(null))).toEqual({ is: 'nothing' });
    const locked = byQpdf(await pdfWith(file), ['--encrypt', 'open', 'own', '256', '--']);
    expect(await siteInPdf(locked)).toEqual({ is: 'nothing' });
    expect(await siteInPdf(new Uint8Array())).toEqual({ is: 'nothing' });
  });

  it('[I52] a damaged sheet is one line, a damaged PDF with files of others nothing', async () => {
    const damaged = (bytes: Uint8Array): Uint8Array => {
      const text = Buffer.from(bytes).toString('latin1');
      // a file cut off behind what it carries has no list of its parts any more
      return Buffer.from(
        text.slice(0, text.indexOf('endstream', text.indexOf('/EmbeddedFile'))),
        'latin1',
      );
    };
    expect(await textIn(damaged(await pdfWith(file)))).toBe(
      'the PDF is damaged, and what it carries cannot be read',
    );
    expect(await textIn(damaged(await attached({ 'a.xml': '<a/>' })))).toBe('nothing');
  });

  it('[I51] files of others are named', async () => {
    expect(await siteInPdf(await attached({ 'survey.xml': '<a/>' }))).toEqual({
      is: 'foreign',
      why: 'no site file is in it, but “survey.xml”: expected one that ends in .site.json',
    });
    const found = await siteInPdf(await attached({ a: 'a', b: 'b', c: 'c', d: 'd', e: 'e' }));
    expect(found).toMatchObject({ why: expect.stringContaining('“a”, “b”, “c” and 2 more') });
  });

  it('[I51] a site file is found among others', async () => {
    const bytes = await attached({ 'a.xml': '<a/>', 'yard.site.json': file.text, 'z.txt': 'z' });
    expect(await textIn(bytes)).toBe(file.text);
  });

  it.each([
    ['{"format": "other"}', /“y\.site\.json”: this is not a site file: expected format/],
    [file.text.slice(0, -30), /“y\.site\.json”: site file is cut off or damaged/],
    ['', /“y\.site\.json”: this is not a site file: expected JSON, found nothing/],
    [file.text.replace(/"version": \d+/, '"version": 9999'), /“y\.site\.json”: .*9999/],
    [new Uint8Array([0xff, 0xfe, 0x00]), /“y\.site\.json”: this is not a site file/],
  ])('[I52] a site file that cannot be opened is one line (%#)', async (held, line) => {
    const said = await textIn(await attached({ 'y.site.json': held }));
    expect(said).toMatch(line);
    expect(said).not.toContain('\n');
  });

  it('[I52] one that cannot be unpacked, is too large or not the only one is one line', async () => {
    const spoilt = Buffer.from(await pdfWith(file));
    const start = spoilt.indexOf('stream', spoilt.indexOf('/EmbeddedFile')) + 8;
    spoilt.fill(0xff, start, start + 200);
    expect(await textIn(spoilt)).toMatch(/^the site file in it, “[^”]+”: it is damaged/);
    const large = await attached({ 'y.site.json': new Uint8Array(mostHeld + 1) });
    expect(large.length).toBeLessThan(1_000_000);
    expect(await textIn(large)).toBe(
      'the site file in it, “y.site.json”: too large: expected at most 60 MB',
    );
    expect(await textIn(await attached({ 'a.site.json': '', 'b.site.json': '' }))).toBe(
      '2 site files are in it, “a.site.json”, “b.site.json”: expected one',
    );
  });

  it('[I52] a list of files that leads back into itself comes to an end', async () => {
    const doc = await PDFDocument.load(await pdfWith(file));
    const names = doc.catalog.lookup(PDFName.of('Names'), PDFDict);
    const tree = names.lookup(PDFName.of('EmbeddedFiles'), PDFDict);
    const ref = doc.context.register(tree);
    names.set(PDFName.of('EmbeddedFiles'), ref);
    tree.set(PDFName.of('Kids'), doc.context.obj([ref, ref]));
    expect(await textIn(await doc.save())).toBe(file.text);
  });

  it('[I52] any bytes give an answer', async () => {
    const whole = await pdfWith(file);
    const spots = fc.array(fc.tuple(fc.nat(whole.length - 1), fc.nat(255)), { maxLength: 40 });
    const cut = fc.integer({ min: 0, max: whole.length });
    await fc.assert(
      fc.asyncProperty(spots, cut, fc.boolean(), async (changes, end, isCut) => {
        const bytes = whole.slice(0, isCut ? end : whole.length);
        for (const [at, value] of changes) if (at < bytes.length) bytes[at] = value;
        const said = await textIn(bytes);
        expect(said === file.text || !said.includes('\n') || said.startsWith('{')).toBe(true);
      }),
      { numRuns: 60 },
    );
  });
});
