import { GState, type jsPDF } from 'jspdf';
import type { Atom, Clip, Fill, Stroke, Text } from '../../drawing/atom.ts';
import type { Palette } from '../../drawing/ink.ts';
import { letterExtent, textBox } from '../../drawing/lettering/textBox.ts';
import { textWidth } from '../../drawing/textWidth.ts';
import { corners } from '../../geometry/orientedBox.ts';
import { toDegrees } from '../../units/radians.ts';
import { faces } from './faces.ts';
import { settled } from './settled.ts';
import { tracePath } from './tracePath.ts';

const pointsInInch = 72;

const paintStroke = (doc: jsPDF, { pen, outline }: Stroke, palette: Palette): void => {
  doc.setDrawColor(palette[pen.ink]);
  doc.setLineWidth(pen.width);
  doc.setLineDashPattern([...pen.dash], 0);
  tracePath(doc, outline);
  doc.stroke();
};

const paintFill = (doc: jsPDF, { ink, opacity, outline }: Fill, palette: Palette): void => {
  doc.saveGraphicsState();
  if (opacity < 1) doc.setGState(new GState({ opacity }));
  doc.setFillColor(palette[ink]);
  tracePath(doc, outline);
  doc.fillEvenOdd();
  doc.restoreGraphicsState();
};

/** The paper under a text, as a patch round its letters. */
const paintHalo = (doc: jsPDF, text: Text, palette: Palette): void => {
  const box = textBox(text);
  const [first, ...rest] = corners({ ...box, halfHeight: box.halfHeight * 0.9 });
  if (first === undefined) return;
  doc.saveGraphicsState();
  doc.setFillColor(palette.paper);
  doc.moveTo(settled(first.x), settled(first.y));
  for (const { x, y } of rest) doc.lineTo(settled(x), settled(y));
  doc.close();
  doc.fillEvenOdd();
  doc.restoreGraphicsState();
};

const paintText = (doc: jsPDF, text: Text, palette: Palette): void => {
  if (text.halo === 'paper') paintHalo(doc, text, palette);
  const { at, size, angle, align, baseline, weight, ink } = text;
  const width = textWidth(text.text, size, weight);
  const back = { left: 0, middle: width / 2, right: width }[align];
  const down = baseline === 'middle' ? (letterExtent.capital / 2) * size : 0;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  doc.setFont(faces[weight], 'normal');
  doc.setFontSize(size * pointsInInch);
  doc.setTextColor(palette[ink]);
  const [x, y] = [at.x - back * cos + down * sin, at.y + back * sin + down * cos];
  const how = { angle: toDegrees(angle), baseline: 'alphabetic' } as const;
  doc.text(text.text, settled(x), settled(y), how);
};

/** Paints one atom on the current page of a PDF whose unit is the inch; `paintClip` paints clips. */
export const paintAtom = (doc: jsPDF, atom: Exclude<Atom, Clip>, palette: Palette): void => {
  switch (atom.do) {
    case 'stroke':
      return paintStroke(doc, atom, palette);
    case 'fill':
      return paintFill(doc, atom, palette);
    case 'text':
      return paintText(doc, atom, palette);
  }
};
