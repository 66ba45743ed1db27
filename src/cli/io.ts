import type { Parsed } from '../units/parsed.ts';

/** What the command line touches of the world, so that tests can stand in for it. */
export interface Io {
  /** The text of a file; the path `-` is standard input. One line says why it cannot be read. */
  readonly readText: (path: string) => Promise<Parsed<string>>;
  /** The bytes of a file, as `readText`. */
  readonly readBytes: (path: string) => Promise<Parsed<Uint8Array>>;
  /** Writes all of a file or leaves what was there; gives the path back. */
  readonly writeFile: (path: string, content: string | Uint8Array) => Promise<Parsed<string>>;
  /** The bytes of the two weights of the lettering that a PDF embeds. */
  readonly readFont: (weight: 'regular' | 'bold') => Promise<Uint8Array>;
  /** The bytes of what rasters a page for a PNG. */
  readonly readRaster: () => Promise<Uint8Array>;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
}
