import {
  decodePDFRawStream,
  PDFArray,
  PDFName,
  PDFNull,
  PDFRawStream,
  type PDFObject,
} from 'pdf-lib';
import { phrase } from '../../phrases/phrase.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';

/** Filters that one stream goes through; each could unpack to far more than it is. Ours, no published source. */
const mostFilters = 4;

/** Bytes that are unpacked at a time. */
const step = 65_536;

/** Parts of a whole that is at most so long; null for one that is longer. */
interface Gathered {
  readonly add: (part: Uint8Array) => boolean;
  readonly whole: () => Uint8Array;
}

const gathered = (most: number): Gathered => {
  const parts: Uint8Array[] = [];
  let size = 0;
  const whole = () => {
    const all = new Uint8Array(size);
    let at = 0;
    for (const part of parts) {
      all.set(part, at);
      at += part.length;
    }
    return all;
  };
  const add = (part: Uint8Array) => {
    size += part.length;
    if (size <= most) parts.push(part);
    return size <= most;
  };
  return { add, whole };
};

/** Null for more than `most` bytes. Throws for what is no deflate. */
type Filter = (bytes: Uint8Array, most: number) => Promise<Uint8Array | null>;

/** Deflate (RFC 1950) by what the platform has: it stops within a block, and a block may be of any size. */
const inflated: Filter = async (bytes, most) => {
  const source = new Blob([bytes as Uint8Array<ArrayBuffer>]).stream();
  const reader = source.pipeThrough(new DecompressionStream('deflate')).getReader();
  const parts = gathered(most);
  for (;;) {
    // one part after the other, so that no more of them wait than one
    // oxlint-disable-next-line no-await-in-loop
    const { done, value } = await reader.read();
    if (done) return parts.whole();
    if (!parts.add(value)) {
      reader.cancel().catch(() => {});
      return null;
    }
  }
};

/** Any other filter, by itself. */
const unfiltered =
  (stream: PDFRawStream, filter: PDFObject): Filter =>
  async (bytes, most) => {
    const dict = stream.dict.clone();
    dict.set(PDFName.of('Filter'), filter);
    const source = decodePDFRawStream(PDFRawStream.of(dict, bytes));
    const parts = gathered(most);
    for (;;) {
      const part = Uint8Array.from(source.getBytes(step));
      if (part.length === 0) return parts.whole();
      if (!parts.add(part)) return null;
    }
  };

const filtersOf = (stream: PDFRawStream): readonly PDFObject[] => {
  const filter = stream.dict.lookup(PDFName.of('Filter'));
  if (filter instanceof PDFArray)
    return filter.asArray().map((_, n) => filter.lookup(n) ?? PDFNull);
  return filter instanceof PDFName ? [filter] : [];
};

/**
 * The bytes of a stream of a PDF out of its filters, never more than `most` on the way. Unread with one line for
 * more, and for what cannot be unpacked.
 */
export const unpacked = async (stream: PDFRawStream, most: number): Promise<Parsed<Uint8Array>> => {
  const filters = filtersOf(stream);
  if (filters.length > mostFilters) {
    return unread(phrase`it is packed ${filters.length} times: expected at most ${mostFilters}`);
  }
  let bytes: Uint8Array | null = stream.getContents();
  try {
    for (const filter of filters) {
      const take = filter === PDFName.of('FlateDecode') ? inflated : unfiltered(stream, filter);
      // oxlint-disable-next-line no-await-in-loop
      bytes = await take(bytes, most);
      if (bytes === null) break;
    }
  } catch {
    return unread(phrase`it is damaged: expected a file that can be unpacked`);
  }
  if (bytes !== null && bytes.length <= most) return read(bytes);
  return unread(phrase`too large: expected at most ${most / 1e6} MB`);
};
