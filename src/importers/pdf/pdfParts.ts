import {
  PDFContext,
  PDFDict,
  PDFName,
  PDFNumber,
  PDFObjectParser,
  PDFParser,
  PDFRawStream,
  PDFRef,
  type PDFObject,
} from 'pdf-lib';
import { unpacked } from './unpacked.ts';

/** What a PDF is made of: its catalogue, from which all else is found, and whether a password locks it. */
export interface PdfParts {
  readonly catalog: PDFDict;
  readonly isEncrypted: boolean;
}

/** Bytes that all packed lists of objects of a file come to: each two may be an object. Ours, no published source. */
const mostPacked = 8_000_000;

const name = PDFName.of;

/** Reads the object at a place, and says where it ends: behind its stream where it has one. */
class Reader extends PDFParser {
  get objects(): PDFContext {
    return this.context;
  }

  at(place: number): { readonly object: PDFObject; readonly end: number } {
    this.bytes.moveTo(place);
    this.skipWhitespaceAndComments();
    const object = this.parseObject();
    return { object, end: this.bytes.offset() };
  }
}

/** The head of an object, or of the dictionary that a file ends with (ISO 32000-1, 7.3.10 and 7.5.5). */
const head =
  /(?<!\d)(\d{1,10})[\0\t\n\f\r ]{1,20}(\d{1,5})[\0\t\n\f\r ]{1,20}obj|(?<![A-Za-z])trailer/g;

/** Where each object of a packed list begins and ends, in the order of their places (ISO 32000-1, 7.5.7). */
const placesIn = (bytes: Uint8Array, first: number) => {
  const numbers = new TextDecoder('latin1').decode(bytes.subarray(0, first)).match(/\d+/g) ?? [];
  const places = numbers.flatMap((number, n) =>
    n % 2 === 0 ? [{ number: Number(number), at: first + Number(numbers[n + 1] ?? NaN) }] : [],
  );
  const sorted = places.filter(({ at }) => at < bytes.length).toSorted((a, b) => a.at - b.at);
  return sorted.map((one, n) => ({ ...one, end: sorted[n + 1]?.at ?? bytes.length }));
};

/** Puts the objects of a packed list with the others; how many bytes it came to. Throws for one that cannot be read. */
const takePacked = async (
  stream: PDFRawStream,
  into: PDFContext,
  room: number,
): Promise<number> => {
  const held = await unpacked(stream, room);
  if (!held.ok) throw new RangeError(held.reason);
  const bytes = held.value;
  const first = stream.dict.lookup(name('First'), PDFNumber).asNumber();
  for (const { number, at, end } of placesIn(bytes, first)) {
    if (at === end) continue;
    const object = PDFObjectParser.forBytes(bytes.subarray(at, end), into).parseObject();
    into.assign(PDFRef.of(number), object);
  }
  return bytes.length;
};

const isCatalog = (object: PDFObject | undefined): object is PDFDict =>
  object instanceof PDFDict && object.lookup(name('Type')) === name('Catalog');

/** The catalogue that the end of a file names, else the last that is in it, as in one that was cut or put together. */
const catalogOf = (objects: PDFContext, root: PDFObject | undefined): PDFDict => {
  const named = objects.lookup(root);
  if (isCatalog(named)) return named;
  const found = objects
    .enumerateIndirectObjects()
    .flatMap(([, one]) => (isCatalog(one) ? [one] : []));
  const last = found.at(-1);
  if (last === undefined) throw new RangeError('expected a catalogue');
  return last;
};

/**
 * Takes a PDF apart from its front to its end, whatever its list of places says: each byte is looked at once, and
 * packed lists come to no more than `mostPacked`. Throws for one that cannot be taken apart.
 */
export const pdfParts = async (bytes: Uint8Array): Promise<PdfParts> => {
  const reader = new Reader(bytes, Infinity, true);
  const text = new TextDecoder('latin1').decode(bytes);
  let [root, lock, room]: [PDFObject | undefined, PDFObject | undefined, number] = [
    undefined,
    undefined,
    mostPacked,
  ];
  const end = (dict: PDFDict) => {
    root = dict.get(name('Root')) ?? root;
    lock = dict.get(name('Encrypt')) ?? lock;
  };
  const heads = new RegExp(head);
  for (let found = heads.exec(text); found !== null; found = heads.exec(text)) {
    const { object, end: behind } = reader.at(heads.lastIndex);
    heads.lastIndex = behind;
    const [, number, generation] = found;
    const stream = object instanceof PDFRawStream ? object : null;
    const type = stream?.dict.lookup(name('Type'));
    if (number === undefined) {
      if (object instanceof PDFDict) end(object);
    } else if (stream !== null && type === name('ObjStm')) {
      // a later one may say another thing of the same object
      // oxlint-disable-next-line no-await-in-loop
      if (lock === undefined) room -= await takePacked(stream, reader.objects, room);
    } else if (stream !== null && type === name('XRef')) end(stream.dict);
    else reader.objects.assign(PDFRef.of(Number(number), Number(generation)), object);
  }
  if (lock !== undefined)
    return { catalog: PDFDict.withContext(reader.objects), isEncrypted: true };
  return { catalog: catalogOf(reader.objects, root), isEncrypted: false };
};
