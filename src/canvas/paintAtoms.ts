import type { Atom, Fill, Stroke, Text } from '../drawing/atom.ts';
import type { Palette } from '../drawing/ink.ts';
import { letterExtent } from '../drawing/lettering/textBox.ts';
import { traceOutline } from './traceOutline.ts';

/** How atoms are painted: the colours, and CSS pixels for an inch of paper. */
export interface Paint {
  readonly palette: Palette;
  readonly scale: number;
}

/** The family that the drawing is lettered in; loaded by the screens. */
export const lettering = 'Barlow, sans-serif';

/** Thinner lines would fade on a screen; CSS pixels. */
const thinnest = 0.75;

const paintStroke = (context: CanvasRenderingContext2D, atom: Stroke, paint: Paint): void => {
  traceOutline(context, atom.outline, paint.scale);
  context.setLineDash(atom.pen.dash.map((part) => part * paint.scale));
  context.lineWidth = Math.max(atom.pen.width * paint.scale, thinnest);
  context.strokeStyle = paint.palette[atom.pen.ink];
  context.stroke();
};

const paintFill = (context: CanvasRenderingContext2D, atom: Fill, paint: Paint): void => {
  traceOutline(context, atom.outline, paint.scale);
  context.globalAlpha = atom.opacity;
  context.fillStyle = paint.palette[atom.ink];
  context.fill('evenodd');
  context.globalAlpha = 1;
};

const aligned = { left: 'left', middle: 'center', right: 'right' } as const;

const paintText = (context: CanvasRenderingContext2D, atom: Text, paint: Paint): void => {
  const size = atom.size * paint.scale;
  const drop = atom.baseline === 'middle' ? (size * letterExtent.capital) / 2 : 0;
  context.save();
  context.translate(atom.at.x * paint.scale, atom.at.y * paint.scale);
  context.rotate(-atom.angle);
  context.font = `${atom.weight === 'bold' ? 600 : 400} ${size}px ${lettering}`;
  context.textAlign = aligned[atom.align];
  context.textBaseline = 'alphabetic';
  if (atom.halo === 'paper') {
    context.setLineDash([]);
    context.lineJoin = 'round';
    context.lineWidth = size * 0.28;
    context.strokeStyle = paint.palette.paper;
    context.strokeText(atom.text, 0, drop);
  }
  context.fillStyle = paint.palette[atom.ink];
  context.fillText(atom.text, 0, drop);
  context.restore();
};

/**
 * Paints atoms in their order on a canvas, from its origin: a paper inch is `scale` units of the
 * context. Leaves the context as it found it, but for its path.
 */
export const paintAtoms = (
  context: CanvasRenderingContext2D,
  atoms: readonly Atom[],
  paint: Paint,
): void => {
  context.save();
  context.lineCap = 'butt';
  context.lineJoin = 'round';
  for (const atom of atoms) {
    if (atom.do === 'stroke') paintStroke(context, atom, paint);
    else if (atom.do === 'fill') paintFill(context, atom, paint);
    else if (atom.do === 'text') paintText(context, atom, paint);
    else {
      context.save();
      traceOutline(context, atom.outline, paint.scale);
      context.clip('evenodd');
      paintAtoms(context, atom.atoms, paint);
      context.restore();
    }
  }
  context.restore();
};
