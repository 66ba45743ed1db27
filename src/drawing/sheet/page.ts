import type { Language } from '../../phrases/languages.ts';
import type { Layer } from '../layer.ts';
import type { Paper } from './papers.ts';
import type { Rect } from './rect.ts';

/** A place on a page, paper inches from its upper left corner, that leads to another page: 1 is the first. */
export interface Link {
  readonly rect: Rect;
  readonly page: number;
}

/**
 * One printed page: everything on it as atoms, in inches from its upper left corner. Layers are
 * painted in their order; one name may come several times.
 */
export interface Page {
  readonly title: string;
  readonly paper: Paper;
  readonly layers: readonly Layer[];
  readonly links: readonly Link[];
  /** The language that it is lettered in; English where it says none. */
  readonly language?: Language;
}
