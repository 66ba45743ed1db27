import { read, unread, type Parsed } from '../../units/parsed.ts';
import type { Frame } from './frame.ts';
import { jpegFrame } from './jpegFrame.ts';
import { pictureKind, type PictureType } from './pictureKind.ts';
import { pngFrame } from './pngFrame.ts';
import { webpFrame } from './webpFrame.ts';
import { phrase } from '../../phrases/phrase.ts';

/** What the head of a picture says before any of it is decoded. */
export interface PictureHeader extends Frame {
  readonly type: PictureType;
}

/** Pixels of the largest picture that is decoded, and of its longer side: 400 MB in memory. Ours. */
export const mostPixels = { all: 100_000_000, side: 32_768 } as const;

const frames = { 'image/jpeg': jpegFrame, 'image/png': pngFrame, 'image/webp': webpFrame } as const;

const millions = (pixels: number): string => `${Math.round(pixels / 1e6).toLocaleString('en-US')}`;

const tooLarge = (width: number, height: number): string | null => {
  const pixels = width * height;
  if (pixels > mostPixels.all) {
    return phrase`expected at most ${millions(mostPixels.all)} megapixels, found ${width} × ${height} (${millions(pixels)} megapixels)`;
  }
  if (Math.max(width, height) <= mostPixels.side) return null;
  return phrase`expected sides of at most ${mostPixels.side} pixels, found ${width} × ${height}`;
};

/**
 * Reads the head of a JPEG, PNG or WebP, by its bytes and not by its name. Unread with one line for
 * anything else, for a head that breaks off, for a picture without pixels and for one that is too large
 * to be decoded; never throws and decodes nothing.
 */
export const pictureHeader = (bytes: Uint8Array): Parsed<PictureHeader> => {
  const type = pictureKind(bytes);
  if (type === null || type === 'application/pdf') {
    return unread(phrase`expected a JPEG, PNG or WebP picture, found something else`);
  }
  const frame = frames[type](new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength));
  if (frame === null)
    return unread(phrase`the picture is cut off or damaged: its head has no size`);
  const { width, height } = frame;
  if (width === 0 || height === 0) return unread(phrase`the picture is damaged: it has no pixels`);
  const fault = tooLarge(width, height);
  return fault === null ? read({ type, ...frame }) : unread(fault);
};
