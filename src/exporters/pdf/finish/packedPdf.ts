import { zlibSync } from 'fflate';
import {
  PDFHeader,
  PDFName,
  PDFNumber,
  PDFObjectStream,
  PDFRawStream,
  PDFRef,
  PDFStream,
  PDFTrailer,
  PDFWriter,
  type PDFContext,
  type PDFDict,
  type PDFObject,
} from 'pdf-lib';

/**
 * So many small objects are packed together, of which structure has thousands: fewer streams are packed faster and
 * to less, and a reader that wants one object unpacks no more than these.
 */
const together = 200;
/** How hard they are packed: they repeat themselves, and more comes to little less. */
const level = 3;

type Held = [PDFRef, PDFObject];

const inLots = (all: readonly Held[]): Held[][] =>
  Array.from({ length: Math.ceil(all.length / together) }, (_, n) =>
    all.slice(n * together, (n + 1) * together),
  );

/** Where an object is: so many bytes into the file, or in a stream of objects at its place. */
type Entry =
  | { readonly is: 'in the file'; readonly number: number; readonly at: number }
  | { readonly is: 'packed'; readonly number: number; readonly in: number; readonly place: number };

/** Bytes of the kind of an entry, of an offset or a number, and of a place among others. */
const widths = [1, 4, 2] as const;
const entryLength = 7;
/** The first of all objects, which is free for ever (ISO 32000-1, 7.5.4). */
const free = 65_535;

/** The numbers of objects, rising, as runs: the first of each and how many there are. */
const runsOf = (entries: readonly Entry[]): number[] => {
  const runs = [0, 1];
  let last = 0;
  for (const { number } of entries) {
    if (number === last + 1) runs[runs.length - 1] = (runs.at(-1) ?? 0) + 1;
    else runs.push(number, 1);
    last = number;
  }
  return runs;
};

/** Entries as the table of a file has them, after that of the first object. */
const tableBytes = (entries: readonly Entry[]): Uint8Array => {
  const bytes = new Uint8Array((entries.length + 1) * entryLength);
  const view = new DataView(bytes.buffer);
  view.setUint16(entryLength - 2, free);
  entries.forEach((entry, n) => {
    const from = (n + 1) * entryLength;
    const inFile = entry.is === 'in the file';
    view.setUint8(from, inFile ? 1 : 2);
    view.setUint32(from + 1, inFile ? entry.at : entry.in);
    view.setUint16(from + 1 + 4, inFile ? 0 : entry.place);
  });
  return bytes;
};

const packed = (dict: PDFDict, bytes: Uint8Array): PDFRawStream => {
  dict.set(PDFName.of('Filter'), PDFName.of('FlateDecode'));
  return PDFRawStream.of(dict, zlibSync(bytes, { level }));
};

/** Writes a document with streams as they are and all else in streams of objects (ISO 32000-1, 7.5.7 and 7.5.8). */
class PackingWriter extends PDFWriter {
  constructor(context: PDFContext) {
    super(context, Number.POSITIVE_INFINITY);
  }

  private table(entries: readonly Entry[], size: number): PDFRawStream {
    const dict = this.createTrailerDict();
    dict.set(PDFName.of('Type'), PDFName.of('XRef'));
    dict.set(PDFName.of('Size'), PDFNumber.of(size));
    dict.set(PDFName.of('W'), this.context.obj([...widths]));
    dict.set(PDFName.of('Index'), this.context.obj(runsOf(entries)));
    return packed(dict, tableBytes(entries));
  }

  protected override async computeBufferSize() {
    const header = PDFHeader.forVersion(1, 7);
    const entries: Entry[] = [];
    const placed: Held[] = [];
    let size = header.sizeInBytes() + 2;
    let number = this.context.largestObjectNumber;
    const put = (ref: PDFRef, object: PDFObject): void => {
      entries.push({ is: 'in the file', number: ref.objectNumber, at: size });
      placed.push([ref, object]);
      size += this.computeIndirectObjectSize([ref, object]);
    };
    const all = this.context.enumerateIndirectObjects();
    for (const [ref, object] of all) if (object instanceof PDFStream) put(ref, object);
    for (const held of inLots(all.filter(([, object]) => !(object instanceof PDFStream)))) {
      const ref = PDFRef.of((number += 1));
      held.forEach(([own], place) =>
        entries.push({ is: 'packed', number: own.objectNumber, in: number, place }),
      );
      const stream = PDFObjectStream.withContextAndObjects(this.context, held, false);
      put(ref, packed(stream.dict, stream.getUnencodedContents()));
    }
    const ref = PDFRef.of((number += 1));
    const start = size;
    entries.push({ is: 'in the file', number, at: start });
    const rising = entries.toSorted((a, b) => a.number - b.number);
    const written: Held = [ref, this.table(rising, number + 1)];
    placed.push(written);
    const trailer = PDFTrailer.forLastCrossRefSectionOffset(start);
    size += this.computeIndirectObjectSize(written) + trailer.sizeInBytes();
    return { size, header, indirectObjects: placed, trailer };
  }
}

/** The bytes of a document that is done: nothing in it waits to be embedded. The same document gives the same bytes. */
export const packedPdf = (context: PDFContext): Promise<Uint8Array> =>
  new PackingWriter(context).serializeToBuffer();
