import type { jsPDF } from 'jspdf';
import type { Atom, Cell, Text } from '../../drawing/atom.ts';
import { palettes } from '../../drawing/palettes.ts';
import type { Page } from '../../drawing/sheet/page.ts';
import { paintAtom } from './paintAtom.ts';
import { paintClip } from './paintClip.ts';
import { pieces } from './pieces.ts';

/** What a marked piece of a page is for one who hears it: a text, a cell of a table, or a part of what is drawn. */
export type Mark =
  { readonly role: 'P' | 'Figure' } | { readonly role: 'TH' | 'TD'; readonly cell: Cell };

/** Writes an operator into the page as it stands; the typings of the library leave this out. */
const write = (doc: jsPDF, line: string): void =>
  (doc.internal as unknown as { write: (line: string) => void }).write(line);

interface Marking {
  readonly doc: jsPDF;
  /** What is drawn between texts: part of the figure, or rules and frames that are no content. */
  readonly drawn: 'Figure' | 'Artifact';
  /** What was marked so far on the page. */
  readonly marks: Mark[];
}

const begin = ({ doc, marks }: Marking, mark: Mark | 'Artifact'): void => {
  if (mark === 'Artifact') return write(doc, '/Artifact BMC');
  write(doc, `/${mark.role} <</MCID ${marks.length}>> BDC`);
  marks.push(mark);
};

const markOf = ({ cell }: Text): Mark => {
  if (cell === undefined) return { role: 'P' };
  return { role: cell.is === 'head' ? 'TH' : 'TD', cell };
};

const paintMarked = (atoms: readonly Atom[], marking: Marking): void => {
  const { doc, drawn } = marking;
  for (const piece of pieces(atoms)) {
    if (piece.is === 'clip') {
      paintClip(doc, piece.clip.outline, () => paintMarked(piece.clip.atoms, marking));
      continue;
    }
    const other = drawn === 'Figure' ? ({ role: drawn } as const) : drawn;
    begin(marking, piece.is === 'text' ? markOf(piece.atoms[0]) : other);
    for (const atom of piece.atoms) paintAtom(doc, atom, palettes.paper);
    write(doc, 'EMC');
  }
};

/**
 * Paints a page on the current page of a PDF: each layer under its name as optional content, in it each text
 * and what is drawn marked and counted from 0. A mark ends in the layer and the clip that it began in.
 * @returns what each mark is, by its number.
 */
export const paintPage = (doc: jsPDF, { layers }: Page): readonly Mark[] => {
  const marks: Mark[] = [];
  for (const { name, atoms } of layers) {
    if (atoms.length === 0) continue;
    write(doc, `/OC /${name} BDC`);
    paintMarked(atoms, { doc, drawn: name === 'sheet' ? 'Artifact' : 'Figure', marks });
    write(doc, 'EMC');
  }
  return marks;
};
