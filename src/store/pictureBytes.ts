import type { Picture } from '../site/picture.ts';

/** So many characters are turned at a time, so that the hand is never kept waiting: 1 MB, whole fours. */
const atOnce = 1 << 20;
/** Bytes that are spelled at a time, whole threes: more arguments than this a call does not take. */
const spelled = 24_576;

const breath = (): Promise<void> => new Promise((done) => setTimeout(done));

/** The bytes of a picture that is kept in a file. It never holds up the page for long. */
export const blobOf = async ({ type, data }: Picture): Promise<Blob> => {
  const parts: Uint8Array<ArrayBuffer>[] = [];
  for (let at = 0; at < data.length; at += atOnce) {
    const letters = atob(data.slice(at, at + atOnce));
    const part = new Uint8Array(letters.length);
    for (let n = 0; n < part.length; n += 1) part[n] = letters.charCodeAt(n);
    parts.push(part);
    await breath();
  }
  return new Blob(parts, { type });
};

const types = ['image/jpeg', 'image/png', 'image/webp'] as const;

/**
 * A picture as a file keeps it, from its bytes; null where those are of another type. It never holds up
 * the page for long.
 */
export const pictureOf = async (blob: Blob): Promise<Picture | null> => {
  const type = types.find((known) => known === blob.type);
  if (type === undefined) return null;
  const bytes = new Uint8Array(await blob.arrayBuffer());
  const parts: string[] = [];
  for (let at = 0; at < bytes.length; at += spelled) {
    parts.push(btoa(String.fromCharCode(...bytes.subarray(at, at + spelled))));
    if (parts.length % 32 === 0) await breath();
  }
  return { type, data: parts.join('') };
};
