import type { PaperPoint } from '../../geometry/point.ts';
import { radians } from '../../units/radians.ts';
import type { Stroke } from '../atom.ts';
import { segmentsOutline } from '../explode/polylineOutline.ts';
import { labelSize, type LabelStyle } from '../lettering/label.ts';
import type { Pen } from '../pen.ts';
import type { LabelPlace } from './detailLabel.ts';
import type { DetailPart } from './detailPart.ts';
import { detailPens } from './detailPens.ts';

/** Paper inches: clear between a thing and its extension lines, how far these and the line go on, half a tick. */
const clear = 0.03;
const past = 0.04;
const tick = 0.03;
/** From the line to the middle of its text. */
const off = 0.14;

/** A length with its text, measured at two places of the picture along a line outside of it. */
export interface Measured {
  readonly ends: readonly [PaperPoint, PaperPoint];
  /** Where the line runs: the height of a level one, how far to the right an upright one is; paper inches. */
  readonly line: number;
  readonly look: LabelStyle;
  /** To which side of the line the text stands: -1 is up or left. */
  readonly side: 1 | -1;
  readonly pen?: Pen;
}

type Segments = (readonly [PaperPoint, PaperPoint])[];

const upright = radians(0);
const turned = radians(Math.PI / 2);

const levelLines = ({ ends: [a, b], line }: Measured): Segments => {
  const [from, to] = a.x <= b.x ? [a, b] : [b, a];
  const reach = ({ x, y }: PaperPoint): Segments[number] => {
    const way = Math.sign(line - y) || 1;
    return [
      { x, y: y + way * clear },
      { x, y: line + way * past },
    ];
  };
  const slash = ({ x }: PaperPoint): Segments[number] => [
    { x: x - tick, y: line + tick },
    { x: x + tick, y: line - tick },
  ];
  const along: Segments[number] = [
    { x: from.x, y: line },
    { x: to.x, y: line },
  ];
  return [along, reach(from), reach(to), slash(from), slash(to)];
};

const flipped = ({ x, y }: PaperPoint): PaperPoint => ({ x: y, y: x });

const stroke = (segments: Segments, pen: Pen): Stroke => ({
  do: 'stroke',
  pen,
  outline: segmentsOutline(segments),
});

/** Places of a text by a level line: over its middle, slid along it, beside its ends, a row farther out. */
const levelPlaces = ({ ends: [a, b], line, look, side }: Measured): LabelPlace[] => {
  const { width, height } = labelSize(look);
  const [low, high] = [Math.min(a.x, b.x), Math.max(a.x, b.x)];
  const [middle, row] = [(low + high) / 2, off + (height - look.size) / 2];
  const shifts = [0, 0.25, -0.25, 0.5, -0.5, 0.75, -0.75].map((share) => share * width);
  const rows = [0, 0.2, 0.4].flatMap((more) =>
    shifts.map((shift) => ({ x: middle + shift, y: line + side * (row + more) })),
  );
  const out = 0.1 + width / 2;
  const ends = [0, 0.3, 0.7, 1.2].flatMap((more) => [
    { x: high + out + more, y: line },
    { x: low - out - more, y: line },
  ]);
  const [first, ...others] = rows;
  const near = first === undefined ? [] : [first, ...others.slice(0, 2)];
  return [...near, ...ends.slice(0, 2), ...others.slice(2), ...ends.slice(2)].map((at) => ({
    at,
    angle: upright,
  }));
};

/** A length measured along a level line. */
export const levelDimension = (measured: Measured): DetailPart => ({
  atoms: [stroke(levelLines(measured), measured.pen ?? detailPens.size)],
  labels: [{ look: measured.look, places: levelPlaces(measured), need: 'must' }],
});

/** Places of a text by an upright line: along it where it is as long, else level beside it or past its ends. */
const uprightPlaces = ({ ends: [a, b], line, look, side }: Measured): LabelPlace[] => {
  const { width } = labelSize(look);
  const [top, foot] = [Math.min(a.y, b.y), Math.max(a.y, b.y)];
  const middle = (top + foot) / 2;
  const along = { at: { x: line + side * off, y: middle }, angle: turned };
  const out = line + side * (0.07 + width / 2);
  const beside = [0, 0.1, -0.1, 0.2, -0.2, 0.35, -0.35, 0.5, 0.7].map((more) => ({
    at: { x: out, y: middle + more },
    angle: upright,
  }));
  const farther = [0.3, 0.6, 0.9].map((more) => ({
    at: { x: out + side * more, y: middle },
    angle: upright,
  }));
  return [...(width < foot - top ? [along] : []), ...beside, ...farther];
};

/** A height measured along an upright line. */
export const uprightDimension = (measured: Measured): DetailPart => {
  const [a, b] = measured.ends;
  const swapped = levelLines({ ...measured, ends: [flipped(a), flipped(b)] });
  const segments = swapped.map(([from, to]) => [flipped(from), flipped(to)] as const);
  return {
    atoms: [stroke(segments, measured.pen ?? detailPens.size)],
    labels: [{ look: measured.look, places: uprightPlaces(measured), need: 'must' }],
  };
};
