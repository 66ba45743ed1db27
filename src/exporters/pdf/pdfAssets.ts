/** The two fonts that the sheets are lettered in, as TrueType files. */
export interface PdfAssets {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}
