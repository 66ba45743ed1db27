import type { Language } from '../phrases/languages.ts';

/** Papers that sheets can be made for; `usual` follows the units of the site. */
export const sheetPapers = [
  ...(['usual', 'letter', 'tabloid', 'ansi-c', 'ansi-d', 'arch-c', 'arch-d'] as const),
  ...(['a4', 'a3', 'a2', 'a1'] as const),
] as const;

/** Which ways the crew sheet can lie. */
export const sheetWays = ['fitting', 'portrait', 'landscape'] as const;

/** Whose set is printed. */
export const sheetReaders = ['all', 'rep', 'office', 'crew'] as const;

/** How the crew sheet is to be laid out. */
export interface SheetOptions {
  readonly paper: (typeof sheetPapers)[number];
  /** `fitting` lies the way that gives the larger plan. */
  readonly orientation: (typeof sheetWays)[number];
  readonly reader: (typeof sheetReaders)[number];
  /** What the crew reads; null until it is chosen: what the screen speaks. */
  readonly language: Language | null;
}
