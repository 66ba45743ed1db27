import {
  PDFArray,
  PDFDict,
  PDFHexString,
  PDFName,
  PDFRawStream,
  PDFString,
  type PDFObject,
} from 'pdf-lib';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { mostHeld, type HeldFile } from './heldFile.ts';
import { pdfParts } from './pdfParts.ts';
import { unpacked } from './unpacked.ts';
import { phrase } from '../../phrases/phrase.ts';

const name = PDFName.of;

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
  return [{ name: isText ? named.decodeText() : '', bytes: () => unpacked(stream, mostHeld) }];
};

/**
 * The files that a PDF carries, in the order of its list of them; none of one that is locked by a password.
 * Unread with one line for a PDF that cannot be taken apart.
 */
export const filesInPdf = async (bytes: Uint8Array): Promise<Parsed<readonly HeldFile[]>> => {
  try {
    const { catalog, isEncrypted } = await pdfParts(bytes);
    if (isEncrypted) return read([]);
    const names = catalog.lookup(name('Names'));
    const tree = names instanceof PDFDict ? names.lookup(name('EmbeddedFiles')) : undefined;
    return read([...new Set(specsIn(tree, new Set()))].flatMap(heldBy));
  } catch {
    return unread(phrase`the PDF is damaged, and what it carries cannot be read`);
  }
};
