import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { pictureHeader } from '../../importers/picture/pictureHeader.ts';
import { phrase } from '../../phrases/phrase.ts';
import type { PictureId } from '../../site/ids.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { encoded } from './encoded.ts';
import { mostKept } from './mostKept.ts';
import type { Taken } from './pictureCall.ts';
import { reduced } from './reduced.ts';

/** The id of a file's picture: the digest of its bytes, and of a PDF which page. */
const pictureIdOf = (bytes: Uint8Array, page: number | null): PictureId =>
  `picture:${bytesToHex(sha256(bytes))}${page === null ? '' : `-p${page}`}`;

/** What a picture that cannot be decoded is told by. */
export const damaged = phrase`the picture is damaged or cut off: it cannot be shown`;

/** The pixels of a picture, turned as its camera said; null where they cannot be had. */
export const decoded = async (picture: Blob): Promise<ImageBitmap | null> => {
  try {
    return await createImageBitmap(picture, { imageOrientation: 'from-image' });
  } catch {
    return null;
  }
};

/**
 * Takes a JPEG, PNG or WebP: its head is looked at before anything is decoded; what is too large for the
 * pad is kept smaller, and so is what a camera wrote into it left out. Unread with one line for anything
 * else, for what is damaged, and for what is too large to be decoded.
 */
export const takenFrom = async (file: Blob): Promise<Parsed<Taken>> => {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const head = pictureHeader(bytes);
  if (!head.ok) return head;
  const { type, notes } = head.value;
  const whole = new Blob([bytes], { type });
  const bitmap = await decoded(whole);
  if (bitmap === null) return unread(damaged);
  const { width, height } = bitmap;
  const id = pictureIdOf(bytes, null);
  const small = Math.max(width, height) <= mostKept.side && bytes.length <= mostKept.bytes;
  if (small && !notes) {
    bitmap.close();
    return read({ id, width, height, kept: whole });
  }
  const kept = await encoded(
    await reduced(bitmap, mostKept.side),
    type === 'image/png' ? 'lines' : 'photo',
  );
  return read({ id, width, height, kept });
};

/** Takes a page of a PDF that was drawn; its pixels are let go. */
export const takenPage = async (
  page: ImageBitmap,
  file: Blob,
  n: number,
): Promise<Parsed<Taken>> => {
  const id = pictureIdOf(new Uint8Array(await file.arrayBuffer()), n);
  const { width, height } = page;
  const kept = await encoded(page, 'lines');
  page.close();
  return read({ id, width, height, kept });
};
