import type { Atom } from '../atom.ts';
import type { Page } from './page.ts';

/** All atoms of a page in the order in which they are painted. */
export const pageAtoms = ({ layers }: Pick<Page, 'layers'>): readonly Atom[] =>
  layers.flatMap(({ atoms }) => atoms);
