import PdfKit from 'pdfkit';
import type { Atom, Fill, Stroke, Text } from '../../src/drawing/atom.ts';
import { letterExtent, textBox } from '../../src/drawing/lettering/textBox.ts';
import type { Outline, Step } from '../../src/drawing/outline.ts';
import { palettes } from '../../src/drawing/palettes.ts';
import type { Page } from '../../src/drawing/sheet/page.ts';
import { textWidth } from '../../src/drawing/textWidth.ts';
import { faces } from '../../src/exporters/pdf/faces.ts';
import type { PdfAssets } from '../../src/exporters/pdf/pdfAssets.ts';
import { arcToBeziers } from '../../src/geometry/arcToBeziers.ts';
import { corners } from '../../src/geometry/orientedBox.ts';
import type { PaperPoint } from '../../src/geometry/point.ts';
import { radians, toDegrees } from '../../src/units/radians.ts';

type Doc = InstanceType<typeof PdfKit>;

/** Points in an inch. */
const inch = 72;
const inks = palettes.paper;

type ArcStep = Extract<Step, { go: 'arc' }>;

const traceArc = (doc: Doc, step: ArcStep, from: PaperPoint | null): PaperPoint | null => {
  const curves = arcToBeziers<'paper'>({
    centre: { x: step.x, y: step.y },
    radius: step.radius,
    start: radians(-step.start),
    sweep: radians(-step.sweep),
  });
  const [first] = curves;
  if (first === undefined) return from;
  const { x, y } = first.from;
  if (from === null) doc.moveTo(x * inch, y * inch);
  else doc.lineTo(x * inch, y * inch);
  for (const { leaving: a, arriving: b, to } of curves) {
    doc.bezierCurveTo(a.x * inch, a.y * inch, b.x * inch, b.y * inch, to.x * inch, to.y * inch);
  }
  return curves.at(-1)?.to ?? from;
};

const trace = (doc: Doc, outline: Outline): void => {
  let at: PaperPoint | null = null;
  for (const step of outline) {
    if (step.go === 'close') {
      doc.closePath();
      continue;
    }
    if (step.go === 'arc') {
      at = traceArc(doc, step, at);
      continue;
    }
    if (step.go === 'move') doc.moveTo(step.x * inch, step.y * inch);
    else doc.lineTo(step.x * inch, step.y * inch);
    at = step;
  }
};

const stroke = (doc: Doc, { pen, outline }: Stroke): void => {
  doc.lineWidth(pen.width * inch);
  if (pen.dash.length === 0) doc.undash();
  else doc.dash(pen.dash.map((part) => part * inch) as unknown as number, {});
  trace(doc, outline);
  doc.stroke(inks[pen.ink]);
};

const fill = (doc: Doc, { ink, opacity, outline }: Fill): void => {
  doc.fillOpacity(opacity);
  trace(doc, outline);
  doc.fill(inks[ink], 'even-odd');
};

const halo = (doc: Doc, text: Text): void => {
  const box = textBox(text);
  const [first, ...rest] = corners({ ...box, halfHeight: box.halfHeight * 0.9 });
  if (first === undefined) return;
  doc.moveTo(first.x * inch, first.y * inch);
  for (const { x, y } of rest) doc.lineTo(x * inch, y * inch);
  doc.closePath().fillOpacity(1).fill(inks.paper, 'even-odd');
};

const letter = (doc: Doc, text: Text): void => {
  if (text.halo === 'paper') halo(doc, text);
  const { at, size, angle, align, baseline, weight, ink } = text;
  const width = textWidth(text.text, size, weight);
  const back = { left: 0, middle: width / 2, right: width }[align];
  const down = baseline === 'middle' ? (letterExtent.capital / 2) * size : 0;
  const [x, y] = [(at.x - back) * inch, (at.y + down) * inch];
  doc
    .font(faces[weight], size * inch)
    .fillColor(inks[ink])
    .fillOpacity(1);
  const how = { lineBreak: false, baseline: 'alphabetic' } as const;
  if (angle === 0) {
    doc.text(text.text, x, y, how);
    return;
  }
  doc.save().rotate(-toDegrees(angle), { origin: [at.x * inch, at.y * inch] });
  doc.text(text.text, x, y, how).restore();
};

const paint = (doc: Doc, atoms: readonly Atom[]): void => {
  for (const atom of atoms) {
    if (atom.do === 'stroke') stroke(doc, atom);
    else if (atom.do === 'fill') fill(doc, atom);
    else if (atom.do === 'text') letter(doc, atom);
    else {
      doc.save();
      trace(doc, atom.outline);
      doc.clip('even-odd');
      paint(doc, atom.atoms);
      doc.restore();
    }
  }
};

/**
 * The atoms of pages as a PDF by another library, with the same fonts cut down to what is used: the strokes,
 * fills, letters and clips alone, without layers, marks, structure, bookmarks, links and what is attached.
 */
export const writtenByPdfKit = (pages: readonly Page[], assets: PdfAssets): Promise<Uint8Array> =>
  new Promise((done, failed) => {
    const doc = new PdfKit({ autoFirstPage: false, margin: 0 });
    const parts: Uint8Array[] = [];
    doc.on('data', (part: Uint8Array) => parts.push(part));
    doc.on('end', () => done(Buffer.concat(parts)));
    doc.on('error', failed);
    doc.registerFont(faces.regular, assets.regular);
    doc.registerFont(faces.bold, assets.bold);
    for (const { paper, layers } of pages) {
      doc.addPage({ size: [paper.width * inch, paper.height * inch], margin: 0 });
      doc.lineCap('butt').lineJoin('round');
      for (const { atoms } of layers) paint(doc, atoms);
    }
    doc.end();
  });
