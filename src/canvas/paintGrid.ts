import { isMetric } from '../units/isMetric.ts';
import type { Palette } from '../drawing/ink.ts';
import type { View } from '../store/view.ts';
import type { LengthSystem } from '../units/lengthStyle.ts';

/** The squares of the graph paper: fine and heavy lines, inches of ground apart. */
export interface Ruling {
  readonly fine: number;
  readonly heavy: number;
}

const metre = 1 / 0.0254;
const powers = [0.01, 0.1, 1, 10, 100, 1000, 10000];

/** Feet in ones, fives and tens; metres likewise. Each fine step with its heavy step. */
const rulings: Readonly<Record<'foot' | 'metre', readonly Ruling[]>> = {
  foot: [
    { fine: 1, heavy: 12 },
    { fine: 12, heavy: 60 },
    ...[5, 10, 50, 100, 500, 1000, 5000].map((feet) => ({ fine: feet * 12, heavy: feet * 120 })),
  ],
  metre: powers.flatMap((power) => [
    { fine: power * metre, heavy: 10 * power * metre },
    { fine: 5 * power * metre, heavy: 10 * power * metre },
  ]),
};

/** Fine lines stand no closer than this on the screen, in CSS pixels. */
const closest = 11;

/** The finest ruling whose lines are far enough apart to be told from each other at this scale. */
export const rulingFor = (scale: number, system: LengthSystem): Ruling => {
  const choices = rulings[isMetric(system) ? 'metre' : 'foot'];
  const found = choices.find(({ fine }) => fine * scale >= closest) ?? choices.at(-1);
  if (found === undefined) throw new RangeError('expected at least one ruling to choose from');
  return found;
};

interface Area {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

const paintLines = (
  context: CanvasRenderingContext2D,
  view: View,
  area: Area,
  { step, width }: { readonly step: number; readonly width: number },
): void => {
  const apart = step * view.scale;
  context.beginPath();
  const firstX = view.x + Math.ceil((area.left - view.x) / apart) * apart;
  for (let x = firstX; x <= area.right; x += apart) {
    context.moveTo(Math.round(x) + 0.5, area.top);
    context.lineTo(Math.round(x) + 0.5, area.bottom);
  }
  const firstY = view.y + Math.ceil((area.top - view.y) / apart) * apart;
  for (let y = firstY; y <= area.bottom; y += apart) {
    context.moveTo(area.left, Math.round(y) + 0.5);
    context.lineTo(area.right, Math.round(y) + 0.5);
  }
  context.lineWidth = width;
  context.stroke();
};

/** What the graph paper is painted with. */
export interface GridPaint {
  readonly view: View;
  readonly area: Area;
  readonly palette: Palette;
  readonly ruling: Ruling;
  /** What lies under the ruling: paper is painted with it, pictures are there already. */
  readonly over: 'paper' | 'pictures';
}

/** Paints paper and its ruling, or the ruling alone, over an area of the screen (CSS pixels). */
export const paintGrid = (context: CanvasRenderingContext2D, paint: GridPaint): void => {
  const { view, area, palette, ruling, over } = paint;
  context.save();
  context.fillStyle = palette.paper;
  const { left, top, right, bottom } = area;
  if (over === 'paper') context.fillRect(left, top, right - left, bottom - top);
  context.strokeStyle = palette.grid;
  paintLines(context, view, area, { step: ruling.fine, width: 1 });
  paintLines(context, view, area, { step: ruling.heavy, width: 2 });
  context.restore();
};
