import { formatAzimuth, parseAzimuth } from '../../units/azimuth.ts';
import { direction } from '../../editor/direction.ts';
import type { Piece } from '../../editor/tool.ts';
import { readTyped, type Typed } from '../../editor/typed.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { phrase, phraseOf } from '../../phrases/phrase.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { parseLength } from '../../units/parseLength.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { radians, type Radians } from '../../units/radians.ts';

/** The two fields as they are typed; empty leaves a figure to the pointer. */
export interface TypedText {
  readonly length: string;
  readonly azimuth: string;
}

export const nothingTyped: TypedText = { length: '', azimuth: '' };

/** What the two fields say; one line for the first that cannot be read or is no length for a piece. */
export const readTexts = ({ length, azimuth }: TypedText, style: LengthStyle): Parsed<Typed> => {
  const far = length.trim() === '' ? null : parseLength(length, style.system);
  if (far !== null && !far.ok) return unread(phrase`Length: ${far.reason}`);
  const way = azimuth.trim() === '' ? null : parseAzimuth(azimuth);
  if (way !== null && !way.ok) return unread(phrase`Direction: ${way.reason}`);
  return readTyped({ length: far?.value ?? null, bearing: way?.value ?? null }, style);
};

/** A direction that a key gives. */
export interface Way {
  readonly label: string;
  readonly name: string;
  readonly azimuth: string;
}

const quarter = Math.PI / 2;

const compass: readonly Way[] = [
  { label: '←', name: phrase`West, to the left`, azimuth: '270' },
  { label: '↑', name: phrase`North, up`, azimuth: '0' },
  { label: '↓', name: phrase`South, down`, azimuth: '180' },
  { label: '→', name: phrase`East, to the right`, azimuth: '90' },
];

const turned = (last: Radians, by: number): string => formatAzimuth(radians(last + by));

/** The ways that a piece can be sent without a pointer: the compass, and square to the last piece. */
export const waysOf = ({ last }: Piece): readonly Way[] => {
  if (last === null) return compass;
  return [
    ...compass,
    {
      label: phrase`Square left`,
      name: phrase`Square to the left of the last`,
      azimuth: turned(last, quarter),
    },
    { label: phraseOf('way')`On`, name: phrase`Straight on`, azimuth: turned(last, 0) },
    {
      label: phrase`Square right`,
      name: phrase`Square to the right of the last`,
      azimuth: turned(last, -quarter),
    },
  ];
};

/** Ground inches that a point has to lie away to tell a direction. */
const tellsWay = 1;

/**
 * The point to press at for a typed piece: where the pointer is, or for a typed direction a point
 * that way. One line where neither says which way it goes, or nothing was typed.
 */
export const pressPoint = (
  piece: Piece,
  typed: Typed,
  pointer: SitePoint | null,
): Parsed<SitePoint> => {
  const { length, bearing } = typed;
  if (length === null && bearing === null) return unread(phrase`Type a length first`);
  if (bearing !== null) {
    const way = direction(bearing);
    const along =
      pointer === null || length !== null
        ? (length ?? 0)
        : (pointer.x - piece.from.x) * way.x + (pointer.y - piece.from.y) * way.y;
    if (along < tellsWay && length === null) return unread(phrase`Type a length as well`);
    return read({ x: piece.from.x + way.x * along, y: piece.from.y + way.y * along });
  }
  const away =
    pointer === null ? 0 : Math.hypot(pointer.x - piece.from.x, pointer.y - piece.from.y);
  return pointer !== null && away >= tellsWay
    ? read(pointer)
    : unread(phrase`Which way? Choose a direction, or tap the pad where it goes`);
};
