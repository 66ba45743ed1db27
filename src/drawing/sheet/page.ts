import type { Atom } from '../atom.ts';
import type { Paper } from './papers.ts';

/** One printed page: everything on it as atoms, in inches from its upper left corner. */
export interface Page {
  readonly title: string;
  readonly paper: Paper;
  readonly atoms: readonly Atom[];
}
