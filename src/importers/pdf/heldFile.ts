import type { Parsed } from '../../units/parsed.ts';

/** A file that a PDF carries. */
export interface HeldFile {
  readonly name: string;
  /** Its bytes; unread with one line where they cannot be unpacked or are more than `mostHeld`. */
  readonly bytes: () => Promise<Parsed<Uint8Array>>;
}

/** Bytes of the largest file that is taken out of a PDF: those of the longest site file, all in letters of three bytes. */
export const mostHeld = 60_000_000;
