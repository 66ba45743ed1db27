/** Whether a word of plain letters stands in the bytes of a file. */
export const holdsWord = (bytes: Uint8Array, word: string): boolean => {
  const sign = new TextEncoder().encode(word);
  const [first = 0] = sign;
  for (let at = bytes.indexOf(first); at >= 0; at = bytes.indexOf(first, at + 1)) {
    if (sign.every((byte, n) => bytes[at + n] === byte)) return true;
  }
  return false;
};
