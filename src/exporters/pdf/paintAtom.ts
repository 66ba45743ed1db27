import type { Atom, Clip, Fill, Stroke, Text } from '../../drawing/atom.ts';
import type { Palette } from '../../drawing/ink.ts';
import { letterExtent, textBox } from '../../drawing/lettering/textBox.ts';
import { textWidth } from '../../drawing/textWidth.ts';
import { corners } from '../../geometry/orientedBox.ts';
import { fromDegrees, toDegrees } from '../../units/radians.ts';
import { inkColour } from './inkColour.ts';
import { inch, writePlace, type PageInk } from './pageInk.ts';
import { settled } from './settled.ts';
import { tracePath } from './tracePath.ts';

const pick = ({ state }: PageInk, { pen }: Stroke, palette: Palette): void => {
  state.tell('strokes', inkColour(palette[pen.ink]).stroke);
  state.pen(pen.width, pen.dash, inch);
};

const paintStroke = (ink: PageInk, stroke: Stroke, palette: Palette): void => {
  pick(ink, stroke, palette);
  tracePath(ink, stroke.outline);
  ink.out.text('S\n');
};

const paintFill = (
  ink: PageInk,
  { ink: colour, opacity, outline }: Fill,
  palette: Palette,
): void => {
  const { out, state } = ink;
  const paint = (): void => {
    state.tell('fills', inkColour(palette[colour]).fill);
    tracePath(ink, outline);
    out.text('f*\n');
  };
  if (opacity === 1) return paint();
  state.within(() => {
    out.text(`/${ink.faded(opacity)} gs\n`);
    paint();
  });
};

/** Paints what is filled and has an edge, by one path: the edge lies over what is filled. */
export const paintEdged = (ink: PageInk, fill: Fill, edge: Stroke, palette: Palette): void => {
  ink.state.tell('fills', inkColour(palette[fill.ink]).fill);
  pick(ink, edge, palette);
  tracePath(ink, edge.outline);
  ink.out.text('B*\n');
};

/** The paper under a text, as a patch round its letters. */
const paintHalo = (ink: PageInk, text: Text, palette: Palette): void => {
  const { out, state } = ink;
  const box = textBox(text);
  state.tell('fills', inkColour(palette.paper).fill);
  corners({ ...box, halfHeight: box.halfHeight * 0.9 }).forEach(({ x, y }, n) => {
    writePlace(ink, x, y);
    out.text(n === 0 ? 'm\n' : 'l\n');
  });
  out.text('h\nf*\n');
};

/** Writes how letters that begin at a place stand: turned about it, or along the paper. */
const writeStand = ({ out, height }: PageInk, x: number, y: number, turn: number): void => {
  if (turn !== 0) {
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    for (const part of [cos, sin, -sin, cos]) out.number(part);
  }
  out.number(settled(x) * inch);
  out.number(height * inch - settled(y) * inch);
  out.text(turn === 0 ? 'Td\n' : 'Tm\n');
};

const paintText = (ink: PageInk, text: Text, palette: Palette): void => {
  if (text.halo === 'paper') paintHalo(ink, text, palette);
  if (text.text === '') return;
  const { at, size, angle, align, baseline, weight } = text;
  const { out, state } = ink;
  const letters = ink.letters[weight];
  const width = textWidth(text.text, size, weight);
  const back = { left: 0, middle: width / 2, right: width }[align];
  const down = baseline === 'middle' ? (letterExtent.capital / 2) * size : 0;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const [x, y] = [at.x - back * cos + down * sin, at.y + back * sin + down * cos];
  out.text('BT\n');
  state.tell('font', `/${letters.key} ${size * inch} Tf\n`);
  state.tell('fills', inkColour(palette[text.ink]).letters);
  writeStand(ink, x, y, fromDegrees(toDegrees(angle)));
  out.text('<');
  letters.write(text.text, out);
  out.text('> Tj\nET\n');
};

/** Paints one atom on a page; `paintClip` paints clips. */
export const paintAtom = (ink: PageInk, atom: Exclude<Atom, Clip>, palette: Palette): void => {
  switch (atom.do) {
    case 'stroke':
      return paintStroke(ink, atom, palette);
    case 'fill':
      return paintFill(ink, atom, palette);
    case 'text':
      return paintText(ink, atom, palette);
  }
};
