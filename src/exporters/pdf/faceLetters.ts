import type { jsPDF } from 'jspdf';
import { faces } from './faces.ts';
import type { PageBytes } from './pageBytes.ts';

type Weight = keyof typeof faces;

/** A font as the PDF library holds it; its typings leave this out. */
interface HeldFont {
  readonly id: string;
  readonly metadata: { readonly characterToGlyph: (code: number) => number };
}

const heldFont = (doc: jsPDF, weight: Weight): HeldFont => {
  doc.setFont(faces[weight], 'normal');
  return doc.getFont() as unknown as HeldFont;
};

/** The letters of one font as pages write them, and which of them were written. */
export class FaceLetters {
  /** What pages call the font. */
  readonly key: string;
  /** Four hexadecimal digits of each letter's glyph by its code; null where the font lacks it. */
  private readonly digits: (Uint8Array | null | undefined)[] = [];
  /** Codes in the order in which they were first written. */
  private readonly codes: number[] = [];
  private readonly lastUse: number[] = [];
  private uses = 0;
  private readonly font: HeldFont;

  private readonly doc: jsPDF;
  private readonly weight: Weight;

  constructor(doc: jsPDF, weight: Weight) {
    this.doc = doc;
    this.weight = weight;
    this.font = heldFont(doc, weight);
    this.key = this.font.id;
  }

  private found(code: number): Uint8Array | null {
    const glyph = this.font.metadata.characterToGlyph(code);
    const own = glyph === 0 ? null : new TextEncoder().encode(glyph.toString(16).padStart(4, '0'));
    this.digits[code] = own;
    if (own !== null) this.codes.push(code);
    return own;
  }

  /** Writes the glyphs of a text; a letter that the font lacks is left out. */
  write(text: string, out: PageBytes): void {
    for (let n = 0; n < text.length; n += 1) {
      const code = text.charCodeAt(n);
      const known = this.digits[code];
      const own = known === undefined ? this.found(code) : known;
      if (own === null) continue;
      this.lastUse[code] = this.uses++;
      out.copy(own);
    }
  }

  /**
   * Tells the PDF library which letters were written, so that it embeds these and no other: by letters on its
   * current page. What a glyph stands for it takes from the last letter that has it, so they are told twice.
   */
  tell(): void {
    const { doc, weight, codes, lastUse } = this;
    const last = codes.toSorted((a, b) => (lastUse[a] ?? 0) - (lastUse[b] ?? 0));
    if (codes.length === 0) return;
    doc.setFont(faces[weight], 'normal');
    for (const all of [codes, last]) doc.text(String.fromCharCode(...all), 0, 0);
  }
}
