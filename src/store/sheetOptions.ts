/** Papers that the crew sheet can be made for. */
export const sheetPapers = ['letter', 'tabloid', 'arch-c', 'arch-d', 'a4', 'a3'] as const;

/** How the crew sheet is to be laid out. */
export interface SheetOptions {
  readonly paper: (typeof sheetPapers)[number];
  readonly orientation: 'portrait' | 'landscape';
}
