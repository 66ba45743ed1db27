import { expandBounds, type Bounds } from '../../../geometry/bounds.ts';
import type { OrientedBox } from '../../../geometry/orientedBox.ts';
import type { LengthSystem } from '../../../units/lengthStyle.ts';
import type { Atom } from '../../atom.ts';
import { layersOnPaper, type DrawnLayer } from '../../drawOnPaper.ts';
import { breaksFor, brokenAt } from '../../explode/brokenAt.ts';
import { rectangleOutline } from '../../explode/polylineOutline.ts';
import type { Lead } from '../../lettering/lettered.ts';
import { textBox } from '../../lettering/textBox.ts';
import { moveAtoms } from '../../moveAtoms.ts';
import { pens } from '../../pens.ts';
import type { Projection } from '../../projection.ts';
import { textWidth } from '../../textWidth.ts';
import { letters } from '../letters.ts';
import { lineOfText } from '../lineOfText.ts';
import type { Layer } from '../../layer.ts';
import type { Rect } from '../rect.ts';
import { fittingScale, scalesOf, type Scale } from '../scales.ts';
import { barScale } from './barScale.ts';
import { graphPaper } from './graphPaper.ts';
import { groundBounds } from '../../groundBounds.ts';
import { northArrow } from './northArrow.ts';
import { roundStep } from './roundStep.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** A plan on a sheet: its layers, the scale that it came to, the texts that found no room, what leads on. */
export interface ScaledPlan {
  readonly layers: readonly Layer[];
  readonly scale: Scale;
  readonly left: readonly string[];
  readonly leads: readonly Lead[];
}

/** What a plan is of, where it goes, and what is said of it. Paper inches. */
export interface PlanPlace {
  readonly drawn: readonly DrawnLayer[];
  readonly system: LengthSystem;
  /** What the ground is drawn in; the row under it is `planFoot` high. */
  readonly window: Rect;
  /** Room round the ground for what is written beside it. */
  readonly clear: number;
  /** The least length of a field of the bar scale; the usual one unless said. */
  readonly leastField?: number;
  /** A part of the ground in the middle of the window, to a scale of its own; else all of it, as large as fits. */
  readonly view?: { readonly bounds: Bounds; readonly scale: Scale };
  /** What stands at the right end of the row under the plan takes so much of it; nothing unless said. */
  readonly taken?: number;
}

/** Height of the row under a plan, paper inches. */
export const planFoot = 0.62;
/** From one line of words in it to the next, paper inches; less where there are more than three. */
const usualPitch = 0.2;
/** Lines of the graph paper are at least so far apart on the paper, inches. */
const leastSquare = 0.2;

const nowhere: Bounds = { minX: 0, minY: 0, maxX: 0, maxY: 0 };

const boundsOfAll = (drawn: readonly DrawnLayer[]): Bounds =>
  groundBounds(drawn.flatMap(({ primitives }) => primitives)) ?? nowhere;

/** The box of an atom that is a text, as a list; an empty one for all others. */
const boxOfText = (atom: Atom): OrientedBox<'paper'>[] =>
  atom.do === 'text' ? [textBox(atom)] : [];

const windowOf = ({ x, y, width, height }: Rect): Bounds => ({
  minX: x,
  minY: y,
  maxX: x + width,
  maxY: y + height,
});

/** The projection that puts the middle of the ground in the middle of the window. */
const centred = (ground: Bounds, window: Rect, ratio: number): Projection => ({
  origin: {
    x: (ground.minX + ground.maxX) / 2 - (window.x + window.width / 2) * ratio,
    y: (ground.minY + ground.maxY) / 2 + (window.y + window.height / 2) * ratio,
  },
  scale: 1 / ratio,
});

/** The largest standard scale at which a plan fits its window; the smallest where none does. */
export const scaleFor = ({ drawn, window, clear, system, view }: PlanPlace): Scale => {
  if (view !== undefined) return view.scale;
  const { minX, minY, maxX, maxY } = boundsOfAll(drawn);
  const room = { width: window.width - 2 * clear, height: window.height - 2 * clear };
  return fittingScale(scalesOf(system), { width: maxX - minX, height: maxY - minY }, room);
};

/** The scale and what a square of the graph paper is, in one line, or in two where that is too long. */
const scaleWords = (scale: string, square: string, room: number): readonly string[] => {
  const parts = [phrase`Scale ${scale}.`, phrase`One square is ${square}.`];
  const whole = parts.join(' ');
  return textWidth(whole, letters.body, 'bold') <= room ? [whole] : parts;
};

/** North arrow, bar scale, scale in words, and what the numbers mean, in the row under the plan. */
const foot = (
  row: Rect,
  {
    scale,
    system,
    leastField,
    taken = 0,
  }: Pick<PlanPlace, 'system' | 'leastField' | 'taken'> & { readonly scale: Scale },
  lines: (room: number) => readonly string[],
): Atom[] => {
  const bar = barScale(1 / scale.ratio, system, leastField);
  const square = roundStep(leastSquare * scale.ratio, system);
  const middle = row.y + row.height / 2;
  const barX = row.x + 0.75;
  const wordsX = barX + bar.width + 0.55;
  const room = row.x + row.width - taken - wordsX;
  const [words = '', ...more] = scaleWords(scale.text, square.text, room);
  const own = [...more, ...lines(room)];
  const pitch = Math.min(usualPitch, planFoot / (own.length + 1));
  const top = middle - (pitch / 2) * own.length;
  return [
    ...moveAtoms(northArrow(), row.x + 0.25, middle + 0.08),
    ...moveAtoms(bar.atoms, barX, middle + 0.06),
    ...lineOfText(words, wordsX, top, { weight: 'bold', width: room }),
    ...own.flatMap((line, n) =>
      lineOfText(line, wordsX, top + pitch * (n + 1), { size: letters.small, width: room }),
    ),
  ];
};

/**
 * A plan on graph paper in its window, to the largest standard scale that fits; ground that none fits is
 * drawn to the smallest and cut off at the edge. Under it north arrow, bar scale, scale, and the lines
 * that `says` has for the room there (paper inches, two lines at most) and for the texts that found none.
 */
export const scaledPlan = (
  place: PlanPlace,
  says: (room: number, left: readonly string[]) => readonly string[],
): ScaledPlan => {
  const { drawn, window, system } = place;
  const scale = scaleFor(place);
  const projection = centred(place.view?.bounds ?? boundsOfAll(drawn), window, scale.ratio);
  const bounds = windowOf(window);
  const { layers, left, leads } = layersOnPaper(drawn, projection, {
    window: expandBounds(bounds, -0.05),
    thin: 'broken',
    clip: bounds,
  });
  const gaps = breaksFor(layers.flatMap(({ atoms }) => atoms.flatMap(boxOfText)));
  const edge = rectangleOutline(window, window.width, window.height);
  const square = roundStep(leastSquare * scale.ratio, system);
  const paper = brokenAt(graphPaper(bounds, projection, square.size), gaps);
  const row = { ...window, y: window.y + window.height, height: planFoot };
  const below = foot(row, { ...place, scale }, (room) => says(room, left));
  return {
    layers: [
      { name: 'sheet', atoms: [{ do: 'clip', outline: edge, atoms: paper }] },
      ...layers.map(({ name, atoms }) => ({
        name,
        atoms: [{ do: 'clip', outline: edge, atoms } as const],
      })),
      { name: 'sheet', atoms: [{ do: 'stroke', pen: pens.thin, outline: edge }, ...below] },
    ],
    scale,
    left,
    leads,
  };
};
