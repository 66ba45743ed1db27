import { zlibSync } from 'fflate';
import {
  PDFCrossRefStream,
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

/** Objects that are packed together, and the stream that they are in. */
interface Lot {
  readonly ref: PDFRef;
  readonly held: Held[];
}

const packed = (dict: PDFDict, bytes: Uint8Array): PDFRawStream => {
  dict.set(PDFName.of('Filter'), PDFName.of('FlateDecode'));
  return PDFRawStream.of(dict, zlibSync(bytes, { level }));
};

/** Writes a document with streams as they are and all else in streams of objects (ISO 32000-1, 7.5.7 and 7.5.8). */
class PackingWriter extends PDFWriter {
  constructor(context: PDFContext) {
    super(context, Number.POSITIVE_INFINITY);
  }

  protected override async computeBufferSize() {
    const header = PDFHeader.forVersion(1, 7);
    const table = PDFCrossRefStream.create(this.createTrailerDict(), false);
    const placed: Held[] = [];
    let size = header.sizeInBytes() + 2;
    let number = this.context.largestObjectNumber;
    const place = (ref: PDFRef, object: PDFObject): void => {
      table.addUncompressedEntry(ref, size);
      placed.push([ref, object]);
      size += this.computeIndirectObjectSize([ref, object]);
    };
    const lots: Lot[] = [];
    // the table lists objects by their numbers, packed or not
    for (const [ref, object] of this.context.enumerateIndirectObjects()) {
      if (object instanceof PDFStream) {
        place(ref, object);
        continue;
      }
      let lot = lots.at(-1);
      if (lot === undefined || lot.held.length === together) {
        lot = { ref: PDFRef.of((number += 1)), held: [] };
        lots.push(lot);
      }
      table.addCompressedEntry(ref, lot.ref, lot.held.length);
      lot.held.push([ref, object]);
    }
    for (const { ref, held } of lots) {
      const stream = PDFObjectStream.withContextAndObjects(this.context, held, false);
      place(ref, packed(stream.dict, stream.getUnencodedContents()));
    }
    const ref = PDFRef.of((number += 1));
    const start = size;
    table.dict.set(PDFName.of('Size'), PDFNumber.of(number + 1));
    table.addUncompressedEntry(ref, start);
    table.updateDict();
    const written: Held = [ref, packed(table.dict, table.getUnencodedContents())];
    placed.push(written);
    const trailer = PDFTrailer.forLastCrossRefSectionOffset(start);
    size += this.computeIndirectObjectSize(written) + trailer.sizeInBytes();
    return { size, header, indirectObjects: placed, trailer };
  }
}

/** The bytes of a document that is done: nothing in it waits to be embedded. The same document gives the same bytes. */
export const packedPdf = (context: PDFContext): Promise<Uint8Array> =>
  new PackingWriter(context).serializeToBuffer();
