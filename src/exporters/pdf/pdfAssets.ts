/** The two fonts that the sheets are lettered in, as TrueType files. */
export interface PdfAssets {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

/** What a PDF says of itself. */
export interface PdfInfo {
  readonly title: string;
  readonly author: string;
  readonly subject: string;
  /** Moment of making, UTC, as `2026-03-09T14:05:00Z`; passed in, so that a sheet can be made again. */
  readonly created: string;
  /** 32 hexadecimal digits that stand for this state of the site. */
  readonly id: string;
}
