import { zlibSync } from 'fflate';
import { GState, type jsPDF } from 'jspdf';
import { palettes } from '../../drawing/palettes.ts';
import type { Page } from '../../drawing/sheet/page.ts';
import { FaceLetters } from './faceLetters.ts';
import { lastPen } from './lastPen.ts';
import { PageBytes } from './pageBytes.ts';
import { PageState } from './pageState.ts';
import type { PageInk } from './pageInk.ts';
import { paintPage, type Mark } from './paintPage.ts';

/** How hard contents are packed: the usual 6 takes half as long again and comes to 2 % less. */
const level = 3;

/** A page as it was written: its content, packed, and what each mark in it is. */
export interface WrittenPage {
  readonly content: Uint8Array;
  readonly marks: readonly Mark[];
}

/** What the library begins the current page with; its typings have lines of a page for a number. */
const beginning = (doc: jsPDF, page: number): string =>
  ((doc.internal.pages as unknown as readonly (readonly string[])[])[page] ?? []).join('\n');

/** Names states of the document by the opacity that fills have in them; each is added to it once. */
const fadedIn = (doc: jsPDF): PageInk['faded'] => {
  const names = new Map<number, string>();
  return (opacity) => {
    const held = names.get(opacity);
    if (held !== undefined) return held;
    const state = new GState({ opacity });
    doc.addGState(`faded ${opacity}`, state);
    const { id } = state as unknown as { readonly id: string };
    names.set(opacity, id);
    return id;
  };
};

/**
 * Adds pages to an empty document of the PDF library, which has the first, and writes their contents beside it:
 * it embeds the letters that they have and names the states that they use.
 */
export const writePages = (
  doc: jsPDF,
  pages: readonly Page[],
  addPage: (page: Page) => void,
): readonly WrittenPage[] => {
  const letters = { regular: new FaceLetters(doc, 'regular'), bold: new FaceLetters(doc, 'bold') };
  const faded = fadedIn(doc);
  const out = new PageBytes();
  const state = new PageState(out);
  const written = pages.map((page, n): WrittenPage => {
    if (n > 0) addPage(page);
    doc.setLineCap('butt');
    doc.setLineJoin('round');
    out.clear();
    out.text(`${beginning(doc, n + 1)}\n`);
    const height = doc.internal.pageSize.getHeight();
    const marks = paintPage({ out, state, height, letters, faded }, page);
    // the library begins a page with the pen of the one before
    const pen = lastPen(page.layers.flatMap(({ atoms }) => atoms));
    if (pen !== null) {
      doc.setLineWidth(pen.width);
      doc.setDrawColor(palettes.paper[pen.ink]);
    }
    return { content: zlibSync(out.written().subarray(0, -1), { level }), marks };
  });
  letters.regular.tell();
  letters.bold.tell();
  return written;
};
