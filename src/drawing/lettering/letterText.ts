import type { PaperPoint } from '../../geometry/point.ts';
import { radians } from '../../units/radians.ts';
import type { Primitive } from '../primitive.ts';
import { toPaper, type Projection } from '../projection.ts';
import { bestOf } from './bestOf.ts';
import { labelAt, labelSize, type Label } from './label.ts';
import { leaderLine } from './leaderLine.ts';
import { unlettered, type Lettered } from './lettered.ts';
import type { Lettering } from './lettering.ts';
import { readable } from './readable.ts';

type TextPrimitive = Extract<Primitive, { kind: 'text' }>;

/** How far out a text may be led, paper inches, and in how many directions it is tried. */
const rings = [0.3, 0.5, 0.75, 1.05, 1.4, 1.8] as const;
const directions = 16;

/** Places round a point, along the text and up from it, the most wished for first. */
const shiftsOf = (width: number, height: number, rise: number): (readonly [number, number])[] => {
  const side = width / 2 + Math.max(0.04, Math.abs(rise));
  const up = rise === 0 ? height : rise + (Math.sign(rise) * height) / 2;
  const centre = rise === 0 ? [[0, 0] as const] : [];
  return [
    ...centre,
    [0, up],
    [0, -up],
    ...([up, -up] as const).flatMap((v) => [[side / 2, v] as const, [-side / 2, v] as const]),
    ...([up, -up] as const).flatMap((v) => [[side, v] as const, [-side, v] as const]),
    [side, 0],
    [-side, 0],
    [0, 2 * up],
    [0, -2 * up],
  ];
};

function* ledOut(primitive: TextPrimitive, at: PaperPoint): Generator<Label> {
  const { width, height } = labelSize(primitive);
  for (const ring of rings) {
    for (let n = 0; n < directions; n++) {
      const turn = (2 * Math.PI * (n + 0.5)) / directions;
      const middle = {
        x: at.x + Math.cos(turn) * (ring + width / 2),
        y: at.y - Math.sin(turn) * (ring + height / 2),
      };
      yield labelAt(primitive, middle, radians(0));
    }
  }
}

function* places(near: readonly Label[], text: TextPrimitive, at: PaperPoint): Generator<Label> {
  yield* near;
  yield* ledOut(text, at);
}

/** Room for a text of a row, in ems: three figures wide and one line high, clear of the next. */
const inRow = { wide: 2.2, high: 1.1 } as const;

/** True where the next of a row of texts lies too near for both to be read. */
const runsTogether = ({ apart, size }: TextPrimitive, { scale }: Projection): boolean =>
  apart !== undefined &&
  Math.abs(apart.x) * scale < inRow.wide * size &&
  Math.abs(apart.y) * scale < inRow.high * size;

/**
 * Finds a place for a free text: where it wishes to be, else beside that, else farther off with a
 * leader, and takes the room. What finds none, or speaks of a place outside the window, is left.
 */
export const letterText = (
  primitive: TextPrimitive,
  projection: Projection,
  room: Lettering,
): Lettered => {
  const { width, height } = labelSize(primitive);
  if (width === 0) return unlettered();
  const plain = (primitive.name ?? primitive.text).replaceAll('\n', ', ');
  if (runsTogether(primitive, projection)) return unlettered(plain);
  const at = toPaper(projection, primitive.at);
  if (!room.sees(at)) return unlettered(plain);
  const [cos, sin] = [Math.cos(primitive.angle), Math.sin(primitive.angle)];
  const angle = readable(primitive.angle);
  const near = shiftsOf(width, height, primitive.rise).map(([along, up]) =>
    labelAt(
      primitive,
      { x: at.x + along * cos - up * sin, y: at.y - along * sin - up * cos },
      angle,
    ),
  );
  const best = bestOf(room, primitive.far === 'leave out' ? near : places(near, primitive, at));
  if (best === null) return unlettered(plain);
  room.take(best.box);
  const lines = near.includes(best) ? [] : leaderLine(at, best.box);
  return { lines, texts: best.texts, left: [] };
};
