import { PDFDict, PDFName, type PDFDocument, type PDFRef } from 'pdf-lib';
import type { Mark } from '../paintPage.ts';
import type { LaidLink } from './addLinks.ts';
import { addTable, goesOn, type MarkedCell, type Place } from './addTable.ts';
import { StructurePart } from './structurePart.ts';
import { pdfText } from './pdfText.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** A page as one who hears it goes through it. */
export interface HeardPage {
  readonly title: string;
  readonly marks: readonly Mark[];
  readonly links: readonly LaidLink[];
}

const name = PDFName.of;

/** The marks from `from` on that are one table. */
const tableFrom = (marks: readonly Mark[], from: number): MarkedCell[] => {
  const found: MarkedCell[] = [];
  for (let n = from; n < marks.length; n += 1) {
    const mark = marks[n];
    if (mark === undefined || !('cell' in mark)) return found;
    const last = found.at(-1);
    if (last !== undefined && !goesOn(last.cell, mark.cell)) return found;
    found.push({ mark: n, cell: mark.cell });
  }
  return found;
};

/** The texts and tables of one page in their order, and what each of its marks belongs to. */
const textsOf = (doc: PDFDocument, { title, marks }: HeardPage, place: Place) => {
  const { context } = doc;
  const part = { P: place.under, Pg: place.page };
  const drawn = marks.flatMap(({ role }, n) => (role === 'Figure' ? [n] : []));
  const whole = { ...part, S: 'Figure', Alt: pdfText(phrase`${title}, drawn`), K: drawn };
  const figure = drawn.length === 0 ? null : context.register(context.obj(whole));
  const owners = new Map<number, PDFRef>();
  const all = new Set<PDFRef>();
  marks.forEach((mark, n) => {
    if (owners.has(n)) return;
    if ('cell' in mark) {
      const { table, owners: cells } = addTable(doc, tableFrom(marks, n), place);
      cells.forEach((cell, own) => owners.set(own, cell));
      all.add(table);
      return;
    }
    const own =
      mark.role === 'Figure' && figure !== null
        ? figure
        : context.register(new StructurePart({ role: 'P', ...place, kids: n }));
    owners.set(n, own);
    all.add(own);
  });
  return { marked: marks.flatMap((_, n) => owners.get(n) ?? []), all: [...all] };
};

/** The parts of one page in their order, and what each of its marks and each of its links belongs to. */
const partsOf = (doc: PDFDocument, heard: HeardPage, place: Place) => {
  const { context } = doc;
  const { marked, all } = textsOf(doc, heard, place);
  const linked = heard.links.map((link) => {
    const whole = { Type: 'OBJR', Obj: link.ref, Pg: place.page };
    return context.register(
      context.obj({
        P: place.under,
        Pg: place.page,
        S: 'Link',
        Alt: pdfText(link.title),
        K: [whole],
      }),
    );
  });
  return { marked, linked, all: [...all, ...linked] };
};

/**
 * The structure of a PDF: a section a page, in it the drawing as one figure, tables with their rows and
 * cells, each other text as a paragraph in the order in which it is painted, and the links. A table that goes
 * on in another column is another table with the same head.
 */
export const addStructure = (doc: PDFDocument, heard: readonly HeardPage[]): void => {
  const { catalog, context } = doc;
  const [root, whole] = [context.nextRef(), context.nextRef()];
  const parents: (number | readonly PDFRef[] | PDFRef)[] = [];
  let linkKey = heard.length;
  const ofLinks: (number | PDFRef)[] = [];
  const sections = doc.getPages().flatMap(({ node, ref: page }, n) => {
    const told = heard[n];
    if (told === undefined) return [];
    const section = context.nextRef();
    const { marked, linked, all } = partsOf(doc, told, { under: section, page });
    context.assign(
      section,
      context.obj({ S: 'Sect', P: whole, T: pdfText(told.title), K: [...all] }),
    );
    node.set(name('StructParents'), context.obj(n));
    node.set(name('Tabs'), name('S'));
    parents.push(n, marked);
    for (const [at, link] of told.links.entries()) {
      context.lookup(link.ref, PDFDict).set(name('StructParent'), context.obj(linkKey));
      const owner = linked[at];
      if (owner !== undefined) ofLinks.push(linkKey, owner);
      linkKey += 1;
    }
    return [section];
  });
  context.assign(whole, context.obj({ S: 'Document', P: root, K: sections }));
  const tree = context.register(context.obj({ Nums: [...parents, ...ofLinks] as never }));
  context.assign(
    root,
    context.obj({
      Type: 'StructTreeRoot',
      K: [whole],
      ParentTree: tree,
      ParentTreeNextKey: linkKey,
    }),
  );
  catalog.set(name('StructTreeRoot'), root);
  catalog.set(name('MarkInfo'), context.obj({ Marked: true }));
};
