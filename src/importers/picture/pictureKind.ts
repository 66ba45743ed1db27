/** Pictures that can lie under a drawing as they are. */
export type PictureType = 'image/jpeg' | 'image/png' | 'image/webp';

/** How far into a file a PDF may begin, bytes (ISO 32000-1, annex H.3, implementation note 13; from memory). */
const pdfWithin = 1024;

const begins = (bytes: Uint8Array, sign: string, at = 0): boolean =>
  [...sign].every((letter, n) => bytes[at + n] === letter.charCodeAt(0));

/**
 * What a file is by its first bytes: JPEG (ITU-T T.81), PNG (W3C PNG, section 5.2), WebP (RFC 9649), PDF;
 * null for anything else. The first 1,100 bytes are enough.
 */
export const pictureKind = (bytes: Uint8Array): PictureType | 'application/pdf' | null => {
  if (begins(bytes, '\xff\xd8\xff')) return 'image/jpeg';
  if (begins(bytes, '\x89PNG\r\n\x1a\n')) return 'image/png';
  if (begins(bytes, 'RIFF') && begins(bytes, 'WEBP', 8)) return 'image/webp';
  const most = Math.min(pdfWithin, bytes.length);
  for (let at = 0; at < most; at += 1) {
    if (begins(bytes, '%PDF-', at)) return 'application/pdf';
  }
  return null;
};
