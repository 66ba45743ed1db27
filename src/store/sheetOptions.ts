/** Papers that the crew sheet can be made for. */
export const sheetPapers = ['letter', 'tabloid', 'arch-c', 'arch-d', 'a4', 'a3'] as const;

/** Which ways the crew sheet can lie. */
export const sheetWays = ['fitting', 'portrait', 'landscape'] as const;

/** How the crew sheet is to be laid out. */
export interface SheetOptions {
  readonly paper: (typeof sheetPapers)[number];
  /** `fitting` lies the way that gives the larger plan. */
  readonly orientation: (typeof sheetWays)[number];
}
