/** The UTF-8 bytes of a letter that is no plain one. */
const encode = (code: number): number[] => {
  const tail = (shift: number): number => 0x80 | ((code >> shift) & 0x3f);
  if (code < 0x800) return [0xc0 | (code >> 6), tail(0)];
  if (code < 0x10000) return [0xe0 | (code >> 12), tail(6), tail(0)];
  return [0xf0 | (code >> 18), tail(12), tail(6), tail(0)];
};

/**
 * A short value that changes when a text does, to tell two prints apart: 32-bit FNV-1a of its
 * UTF-8 bytes as eight hexadecimal digits (G. Fowler, L. C. Noll, K.-P. Vo: offset basis and
 * prime). It guards against mix-ups, not against forgery.
 */
export const checkValue = (text: string): string => {
  let hash = 0x811c9dc5;
  const take = (byte: number): void => {
    hash = Math.imul(hash ^ byte, 0x01000193) >>> 0;
  };
  for (const letter of text) {
    const code = letter.codePointAt(0) ?? 0;
    // nearly all of a saved site is plain letters
    if (code < 0x80) take(code);
    else encode(code).forEach(take);
  }
  return hash.toString(16).toUpperCase().padStart(8, '0');
};
