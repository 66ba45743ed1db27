import {
  decodePDFRawStream,
  ParseSpeeds,
  PDFArray,
  PDFDict,
  PDFDocument,
  PDFHexString,
  PDFName,
  PDFRawStream,
  PDFString,
  type PDFObject,
} from 'pdf-lib';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { mostHeld, type HeldFile } from './heldFile.ts';

const name = PDFName.of;
/** Bytes that are unpacked at a time. */
const step = 1_000_000;

const unpacked = (stream: PDFRawStream): Parsed<Uint8Array> => {
  try {
    const source = decodePDFRawStream(stream);
    const parts: Uint8Array[] = [];
    let size = 0;
    for (;;) {
      const part = Uint8Array.from(source.getBytes(step));
      if (part.length === 0) break;
      parts.push(part);
      size += part.length;
      if (size > mostHeld) return unread(`too large: expected at most ${mostHeld / 1e6} MB`);
    }
    const whole = new Uint8Array(size);
    let at = 0;
    for (const part of parts) {
      whole.set(part, at);
      at += part.length;
    }
    return read(whole);
  } catch {
    return unread('it is damaged: expected a file that can be unpacked');
  }
};

/** Every description of a file in a tree of names; one that leads back into itself is gone through once. */
const specsIn = (node: PDFObject | undefined, seen: Set<PDFObject>): PDFDict[] => {
  if (!(node instanceof PDFDict) || seen.has(node)) return [];
  seen.add(node);
  const [names, kids] = [node.lookup(name('Names')), node.lookup(name('Kids'))];
  const own = names instanceof PDFArray ? names.asArray().map((_, n) => names.lookup(n)) : [];
  const below = kids instanceof PDFArray ? kids.asArray().map((_, n) => kids.lookup(n)) : [];
  return [
    ...own.filter((one) => one instanceof PDFDict),
    ...below.flatMap((kid) => specsIn(kid, seen)),
  ];
};

const heldBy = (spec: PDFDict): HeldFile[] => {
  const named = spec.lookup(name('UF')) ?? spec.lookup(name('F'));
  const held = spec.lookup(name('EF'));
  if (!(held instanceof PDFDict)) return [];
  const stream = held.lookup(name('UF')) ?? held.lookup(name('F'));
  if (!(stream instanceof PDFRawStream)) return [];
  const isText = named instanceof PDFString || named instanceof PDFHexString;
  return [{ name: isText ? named.decodeText() : '', bytes: () => unpacked(stream) }];
};

/**
 * The files that a PDF carries, in the order of its list of them; none of one that is locked by a password.
 * Unread with one line for a PDF that cannot be taken apart.
 */
export const filesInPdf = async (bytes: Uint8Array): Promise<Parsed<readonly HeldFile[]>> => {
  try {
    const { catalog, isEncrypted } = await PDFDocument.load(bytes, {
      updateMetadata: false,
      ignoreEncryption: true,
      throwOnInvalidObject: true,
      parseSpeed: ParseSpeeds.Fastest,
    });
    if (isEncrypted) return read([]);
    const names = catalog.lookup(name('Names'));
    const tree = names instanceof PDFDict ? names.lookup(name('EmbeddedFiles')) : undefined;
    return read([...new Set(specsIn(tree, new Set()))].flatMap(heldBy));
  } catch {
    return unread('the PDF is damaged, and what it carries cannot be read');
  }
};
