import { PDFDict, PDFName, type PDFDocument, type PDFRef } from 'pdf-lib';
import type { Role } from '../paintPage.ts';
import type { LaidLink } from './addLinks.ts';
import { pdfText } from './pdfText.ts';

/** A page as one who hears it goes through it. */
export interface HeardPage {
  readonly title: string;
  readonly roles: readonly Role[];
  readonly links: readonly LaidLink[];
}

const name = PDFName.of;

/** The parts of one page in their order, and what each of its marks and each of its links belongs to. */
const partsOf = (
  { context }: PDFDocument,
  { title, roles, links }: HeardPage,
  under: { readonly section: PDFRef; readonly page: PDFRef },
) => {
  const part = { P: under.section, Pg: under.page };
  const drawn = roles.flatMap((role, n) => (role === 'Figure' ? [n] : []));
  const figure =
    drawn.length === 0
      ? null
      : context.register(
          context.obj({ ...part, S: 'Figure', Alt: pdfText(`${title}, drawn`), K: drawn }),
        );
  const marked = roles.map((role, n) =>
    role === 'Figure' && figure !== null
      ? figure
      : context.register(context.obj({ ...part, S: 'P', K: n })),
  );
  const linked = links.map((link) => {
    const whole = { Type: 'OBJR', Obj: link.ref, Pg: under.page };
    return context.register(
      context.obj({ ...part, S: 'Link', Alt: pdfText(link.title), K: [whole] }),
    );
  });
  return { marked, linked, all: [...new Set([...marked, ...linked])] };
};

/**
 * The structure of a PDF: a section a page, in it the drawing as one figure, each text as a paragraph in
 * the order in which it is painted, and the links. Tables are read cell by cell, row by row; that they are
 * tables is not told.
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
    const { marked, linked, all } = partsOf(doc, told, { section, page });
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
