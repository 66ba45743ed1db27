import { crc32, inflateSync } from 'node:zlib';

/** What a PNG says of itself, and its pixels, four bytes each, row after row. */
export interface ReadPng {
  readonly width: number;
  readonly height: number;
  /** Pixels a metre, across and down, and 1 for metres; null where it does not say. */
  readonly physical: readonly [number, number, number] | null;
  readonly at: (x: number, y: number) => readonly number[];
}

interface Chunk {
  readonly name: string;
  readonly data: Buffer;
}

const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

/** The chunks in their order; throws where a length or a check sum is wrong. */
const chunksOf = (png: Buffer): Chunk[] => {
  if (!png.subarray(0, 8).equals(signature)) throw new Error('expected the signature of a PNG');
  const chunks: Chunk[] = [];
  for (let at = 8; at < png.length;) {
    const length = png.readUInt32BE(at);
    const named = png.subarray(at + 4, at + 8 + length);
    if (crc32(named) !== png.readUInt32BE(at + 8 + length)) {
      throw new Error(`expected the check sum of ${named.toString('latin1', 0, 4)}`);
    }
    chunks.push({ name: named.toString('latin1', 0, 4), data: named.subarray(4) });
    at += 12 + length;
  }
  return chunks;
};

const paeth = (a: number, b: number, c: number): number => {
  const p = a + b - c;
  const [pa, pb, pc] = [Math.abs(p - a), Math.abs(p - b), Math.abs(p - c)];
  if (pa <= pb && pa <= pc) return a;
  return pb <= pc ? b : c;
};

/** Rows without their filters (PNG specification, clause 9), 8 bits a channel. */
const unfiltered = (rows: Buffer, width: number, height: number, each: number): Buffer => {
  const row = width * each;
  const out = Buffer.alloc(row * height);
  for (let y = 0; y < height; y += 1) {
    const filter = rows[y * (row + 1)] ?? 0;
    for (let x = 0; x < row; x += 1) {
      const a = x < each ? 0 : (out[y * row + x - each] ?? 0);
      const b = y === 0 ? 0 : (out[(y - 1) * row + x] ?? 0);
      const c = x < each || y === 0 ? 0 : (out[(y - 1) * row + x - each] ?? 0);
      const add = [0, a, b, (a + b) >> 1, paeth(a, b, c)][filter] ?? 0;
      out[y * row + x] = (rows[y * (row + 1) + 1 + x] ?? 0) + add;
    }
  }
  return out;
};

/** Reads a PNG as the specification has it (W3C, third edition), 8 bits a channel, not interlaced. */
export const readPng = (bytes: Uint8Array): ReadPng => {
  const chunks = chunksOf(Buffer.from(bytes));
  const one = (name: string) => chunks.find((chunk) => chunk.name === name)?.data;
  const head = one('IHDR');
  if (head === undefined || chunks[0]?.name !== 'IHDR' || chunks.at(-1)?.name !== 'IEND') {
    throw new Error('expected IHDR first and IEND last');
  }
  const [width, height] = [head.readUInt32BE(0), head.readUInt32BE(4)];
  const each = head[9] === 6 ? 4 : 3;
  const data = Buffer.concat(chunks.filter(({ name }) => name === 'IDAT').map((c) => c.data));
  const pixels = unfiltered(inflateSync(data), width, height, each);
  const size = one('pHYs');
  return {
    width,
    height,
    physical:
      size === undefined ? null : [size.readUInt32BE(0), size.readUInt32BE(4), size[8] ?? 0],
    at: (x, y) => [...pixels.subarray((y * width + x) * each, (y * width + x) * each + 3)],
  };
};
