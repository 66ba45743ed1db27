import { deflateSync } from 'node:zlib';

/** Bits from the lowest up, as deflate packs them (RFC 1951, section 3.1.1). */
class Bits {
  readonly bytes: number[] = [];
  #held = 0;
  #count = 0;

  put(value: number, bits: number): void {
    this.#held |= value << this.#count;
    this.#count += bits;
    while (this.#count >= 8) {
      this.bytes.push(this.#held & 0xff);
      this.#held >>>= 8;
      this.#count -= 8;
    }
  }

  close(): void {
    if (this.#count > 0) this.put(0, 8 - this.#count);
  }
}

/** A byte 144 to 255 or a length in the fixed codes (RFC 1951, section 3.2.6), which stand with the highest bit first. */
const reversed = (code: number, bits: number): number =>
  Number.parseInt(code.toString(2).padStart(bits, '0').split('').toReversed().join(''), 2);

/**
 * One block of deflate that unpacks to one letter and `times` copies of 258 more: a packer would break it
 * into blocks, and what counts only behind a block counts too late. In the wrapping of RFC 1950, its sum 0.
 */
export const oneBlock = (letter: number, times: number): Uint8Array => {
  const bits = new Bits();
  bits.put(1, 1);
  bits.put(1, 2);
  bits.put(reversed(0x30 + letter, 8), 8);
  // length 258 is code 285, distance 1 is code 0
  const [length, distance] = [reversed(0b11000101, 8), 0];
  for (let n = 0; n < times; n += 1) {
    bits.put(length, 8);
    bits.put(distance, 5);
  }
  bits.put(0, 7);
  bits.close();
  const held = new Uint8Array(bits.bytes.length + 6);
  held.set([0x78, 0x9c]);
  held.set(bits.bytes, 2);
  return held;
};

/** So many bytes of one letter, packed once or over and over. */
export const packed = (letter: number, size: number, layers: number): Uint8Array => {
  let bytes: Uint8Array = new Uint8Array(size).fill(letter);
  for (let n = 0; n < layers; n += 1) bytes = new Uint8Array(deflateSync(bytes, { level: 9 }));
  return bytes;
};
