import type { Atom, Cell, Clip, Text } from '../../drawing/atom.ts';
import { palettes } from '../../drawing/palettes.ts';
import type { Page } from '../../drawing/sheet/page.ts';
import { isEdgeOf } from './isEdgeOf.ts';
import { paintAtom, paintEdged } from './paintAtom.ts';
import { paintClip } from './paintClip.ts';
import type { PageInk } from './pageInk.ts';
import { pieces } from './pieces.ts';

/** What a marked piece of a page is for one who hears it: a text, a cell of a table, or a part of what is drawn. */
export type Mark =
  { readonly role: 'P' | 'Figure' } | { readonly role: 'TH' | 'TD'; readonly cell: Cell };

interface Marking {
  readonly ink: PageInk;
  /** What is drawn between texts: part of the figure, or rules and frames that are no content. */
  readonly drawn: 'Figure' | 'Artifact';
  /** What was marked so far on the page. */
  readonly marks: Mark[];
}

const begin = ({ ink: { out }, marks }: Marking, mark: Mark | 'Artifact'): void => {
  if (mark === 'Artifact') return out.text('/Artifact BMC\n');
  out.text(`/${mark.role} <</MCID ${marks.length}>> BDC\n`);
  marks.push(mark);
};

const markOf = ({ cell }: Text): Mark => {
  if (cell === undefined) return { role: 'P' };
  return { role: cell.is === 'head' ? 'TH' : 'TD', cell };
};

const paintAtoms = (ink: PageInk, atoms: readonly Exclude<Atom, Clip>[]): void => {
  for (let n = 0; n < atoms.length; n += 1) {
    const [atom, next] = [atoms[n], atoms[n + 1]];
    if (atom?.do === 'fill' && next?.do === 'stroke' && isEdgeOf(atom, next)) {
      paintEdged(ink, atom, next, palettes.paper);
      n += 1;
    } else if (atom !== undefined) paintAtom(ink, atom, palettes.paper);
  }
};

const paintMarked = (atoms: readonly Atom[], marking: Marking): void => {
  const { ink, drawn } = marking;
  for (const piece of pieces(atoms)) {
    if (piece.is === 'clip') {
      paintClip(ink, piece.clip.outline, () => paintMarked(piece.clip.atoms, marking));
      continue;
    }
    const other = drawn === 'Figure' ? ({ role: drawn } as const) : drawn;
    begin(marking, piece.is === 'text' ? markOf(piece.atoms[0]) : other);
    paintAtoms(ink, piece.atoms);
    ink.out.text('EMC\n');
  }
};

/**
 * Paints a page as the content of one of a PDF: each layer under its name as optional content, in it each text
 * and what is drawn marked and counted from 0. A mark ends in the layer and the clip that it began in.
 * @returns what each mark is, by its number.
 */
export const paintPage = (ink: PageInk, { layers }: Page): readonly Mark[] => {
  const marks: Mark[] = [];
  for (const { name, atoms } of layers) {
    if (atoms.length === 0) continue;
    // a reader that hides a layer may leave out what is told in it
    ink.state.forget();
    ink.out.text(`/OC /${name} BDC\n`);
    paintMarked(atoms, { ink, drawn: name === 'sheet' ? 'Artifact' : 'Figure', marks });
    ink.out.text('EMC\n');
  }
  return marks;
};
