import { PDFArray, PDFDict, PDFDocument, PDFName, PDFRawStream, decodePDFRawStream } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import type { Page } from '../../../../src/drawing/sheet/page.ts';
import type { PdfInfo } from '../../../../src/exporters/pdf/pdfInfo.ts';
import { toPdf } from '../../../../src/exporters/pdf/toPdf.ts';
import { scene } from '../../scene.ts';
import { hostileNames } from '../hostileNames.ts';
import { popplerInfo, popplerPages, qpdfCheck } from '../poppler.ts';
import { someInfo as info } from '../someInfo.ts';
import { sheetFonts } from '../sheetFonts.ts';
import { withPdf } from '../withPdf.ts';

const atoms = scene.layers.flatMap((layer) => layer.atoms);
const [stroke, clip, first, second, turned] = atoms;
if (
  stroke === undefined ||
  clip?.do !== 'clip' ||
  first?.do !== 'text' ||
  second?.do !== 'text' ||
  turned === undefined
) {
  throw new Error('expected the scene as it was');
}
/** A page on which layers come twice, and texts and clips lie in a clip. */
const drawn: Page = {
  ...scene,
  title: '1 Plan',
  layers: [
    { name: 'yard', atoms: [stroke, { ...clip, atoms: [first, ...clip.atoms, clip, stroke] }] },
    { name: 'dimensions', atoms: [{ ...first, text: `12'-6"` }, stroke] },
    { name: 'flags', atoms: [] },
    { name: 'yard', atoms: [second] },
    { name: 'sheet', atoms: [stroke, turned] },
  ],
  links: [
    { rect: { x: 1, y: 2, width: 3, height: 0.5 }, page: 2 },
    { rect: { x: 0, y: 0, width: 1, height: 1 }, page: 7 },
  ],
};
const list: Page = { ...scene, title: '2 Lists', paper: { label: 'T', width: 17, height: 11 } };
const made = (more: Partial<PdfInfo> = {}, pages: readonly Page[] = [drawn, list]) =>
  toPdf(pages, sheetFonts, { ...info, ...more }, null);

/** The operators of a page that open and close something, in their order. */
const brackets = async (bytes: Uint8Array, n: number): Promise<string[]> => {
  const doc = await PDFDocument.load(bytes, { updateMetadata: false });
  const stream = doc.getPage(n).node.lookup(PDFName.of('Contents'));
  if (!(stream instanceof PDFRawStream)) throw new Error('expected one stream');
  const text = Buffer.from(decodePDFRawStream(stream).decode()).toString('latin1');
  return [...text.matchAll(/(?:^|\s)(q|Q|BT|ET|BMC|BDC|EMC)(?=\s|$)/g)].map(([, op = '']) => op);
};

/** A node of a structure as pdf.js tells it. */
interface Node {
  readonly role?: string;
  readonly children?: readonly Node[];
}

describe('finishPdf', () => {
  it('[X50] says title, author, subject, keywords, language and day', async () => {
    const told = await withPdf(await made(), async (pdf) => (await pdf.getMetadata()).info);
    expect(told).toMatchObject({
      Title: 'Back yard',
      Author: 'A. Rep',
      Subject: 'Crew sheet',
      Keywords: 'fence, gates',
      Language: 'en-US',
      CreationDate: 'D:20260309',
    });
    expect(told).not.toHaveProperty('ModDate');
    expect(popplerInfo(await made())).toMatchObject({
      Title: 'Back yard',
      Keywords: 'fence, gates',
    });
  });

  it('[X53] bears no day where the site has none', async () => {
    const bytes = await made({ day: null, author: '' });
    const told = await withPdf(bytes, async (pdf) => (await pdf.getMetadata()).info);
    expect(told).not.toHaveProperty('CreationDate');
    expect(told).not.toHaveProperty('Author');
    expect(Buffer.from(bytes).toString('latin1')).not.toMatch(/D:20/);
  });

  it('[X51] layers are named once each, all on, and one that is off is not read', async () => {
    const layers = await withPdf(await made(), async (pdf) => {
      const config = await pdf.getOptionalContentConfig();
      return [...config].map(([, group]) => [group.name, group.visible]);
    });
    expect(layers).toEqual([
      ['Sheet and tables', true],
      ['Yard', true],
      ['Dimensions', true],
    ]);
    const doc = await PDFDocument.load(await made(), { updateMetadata: false });
    const said = doc.catalog.lookup(PDFName.of('OCProperties'), PDFDict);
    const third = said.lookup(PDFName.of('OCGs'), PDFArray).get(2);
    said.lookup(PDFName.of('D'), PDFDict).set(PDFName.of('OFF'), doc.context.obj([third]));
    const [on] = popplerPages(await made());
    const [without] = popplerPages(await doc.save());
    expect(on).toContain(`12'-6"`);
    expect(without).not.toContain(`12'-6"`);
    expect(without).toContain('Größe');
  });

  it('[X51] what is marked is closed in the clip, text and layer that it was opened in', async () => {
    for (const n of [0, 1]) {
      const open: string[] = [];
      const ends: Record<string, readonly string[]> = {
        Q: ['q'],
        ET: ['BT'],
        EMC: ['BMC', 'BDC'],
      };
      const found = await brackets(await made(), n);
      expect(found.filter((op) => op === 'BDC').length).toBeGreaterThan(2);
      for (const op of found) {
        const opens = ends[op];
        if (opens === undefined) open.push(op);
        else expect(opens).toContain(open.pop());
      }
      expect(open).toEqual([]);
    }
  });

  it('[X52] a link leads to the page that it names, from where it lies on the paper', async () => {
    const links = await withPdf(await made(), async (pdf) => {
      const page = await pdf.getPage(1);
      const found = (await page.getAnnotations()) as {
        rect: number[];
        dest: unknown[];
        url?: string;
      }[];
      const lists = (await pdf.getPage(2)).ref;
      expect(found[0]?.dest[0]).toEqual(lists);
      return found;
    });
    // the other leads to no page of the set
    expect(links).toHaveLength(1);
    expect(links[0]?.rect).toEqual([72, 72 * 8.5, 72 * 4, 72 * 9]);
  });

  it('[X52] a bookmark for each page, and pages counted from 1', async () => {
    await withPdf(await made(), async (pdf) => {
      const outline = (await pdf.getOutline()) as { title: string; dest: unknown[] }[];
      expect(outline.map(({ title }) => title)).toEqual(['1 Plan', '2 Lists']);
      const refs = [(await pdf.getPage(1)).ref, (await pdf.getPage(2)).ref];
      expect(outline.map(({ dest }) => dest[0])).toEqual(refs);
      expect(await pdf.getPageLabels()).toEqual(['1', '2']);
    });
  });

  it('[X54] a page is a section with one figure, its texts and its links', async () => {
    const roles = await withPdf(await made(), async (pdf) => {
      const tree = (await (await pdf.getPage(1)).getStructTree()) as Node | null;
      const flat = ({ role, children = [] }: Node): string[] => [
        ...(role === undefined ? [] : [role]),
        ...children.flatMap(flat),
      ];
      return tree === null ? [] : flat(tree);
    });
    expect(roles).toEqual(['Root', 'Document', 'Sect', 'Figure', 'P', 'P', 'P', 'P', 'Link']);
  });

  it('[X56] names of every sort come back, in properties and bookmarks', async () => {
    const pages = hostileNames.map(([title]) => ({ ...list, title }));
    const bytes = await made({}, pages);
    expect(qpdfCheck(bytes)).toContain('No syntax or stream encoding errors found');
    const outline = await withPdf(bytes, (pdf) => pdf.getOutline());
    expect(outline.map(({ title }) => title.trimEnd())).toEqual(
      hostileNames.map(([, shown]) => shown),
    );
    for (const [name, shown] of hostileNames) {
      const titled = await made({ title: name, author: name, subject: name, keywords: [name] }, [
        list,
      ]);
      const told = (await withPdf(titled, async (pdf) => (await pdf.getMetadata()).info)) as Record<
        string,
        string
      >;
      for (const key of ['Title', 'Author', 'Subject', 'Keywords']) {
        expect(told[key]?.trimEnd()).toBe(shown);
      }
      expect(popplerInfo(titled)['Title']?.trimEnd()).toBe(shown);
    }
  });
});
