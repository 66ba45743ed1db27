/** What a PDF says of itself. */
export interface PdfInfo {
  readonly title: string;
  readonly author: string;
  readonly subject: string;
  readonly keywords: readonly string[];
  /** The day that the site bears, as a PDF writes one (`pdfDay`); null where it bears none. */
  readonly day: string | null;
  /** 32 hexadecimal digits that stand for this state of the site. */
  readonly id: string;
}
