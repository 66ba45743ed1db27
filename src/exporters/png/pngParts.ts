/** What a PNG is made with, as bytes: the module that rasters SVG and the two fonts of the sheets. */
export interface PngParts {
  readonly raster: Uint8Array;
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}
