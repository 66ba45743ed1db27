import { PDFObject, type PDFRef } from 'pdf-lib';

/** A part of the structure: what it is, under which other and on which page it stands, and what is in it. */
export interface PartTold {
  readonly role: 'P' | 'TR' | 'TH' | 'TD';
  readonly under: PDFRef;
  readonly page: PDFRef;
  /** The number of one mark, or the numbers of some, or other parts. */
  readonly kids: number | readonly (number | PDFRef)[];
  /** What is told of it besides, as a PDF writes it. */
  readonly attributes?: string;
}

const textOf = ({ role, under, page, kids, attributes }: PartTold): string => {
  const own = typeof kids === 'number' ? `${kids}` : `[ ${kids.map((kid) => `${kid} `).join('')}]`;
  const more = attributes === undefined ? '' : `/A ${attributes}\n`;
  return `<<\n/S /${role}\n/P ${under}\n/Pg ${page}\n/K ${own}\n${more}>>`;
};

/**
 * A part of the structure as the file has it, in plain letters. There are many thousands in a set, of which nothing
 * is asked before they are written: as dictionaries of the library they would be slow to make, to measure and to write.
 */
export class StructurePart extends PDFObject {
  private readonly text: string;

  constructor(told: PartTold) {
    super();
    this.text = textOf(told);
  }

  override toString(): string {
    return this.text;
  }

  override sizeInBytes(): number {
    return this.text.length;
  }

  override copyBytesInto(buffer: Uint8Array, offset: number): number {
    const { text } = this;
    for (let n = 0; n < text.length; n += 1) buffer[offset + n] = text.charCodeAt(n);
    return text.length;
  }
}
