import { formatLength } from '../../units/formatLength.ts';
import { radians } from '../../units/radians.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { fromHook } from '../../engine/posts/fromHook.ts';
import type { Atom } from '../atom.ts';
import { rectangleOutline, segmentsOutline } from '../explode/polylineOutline.ts';
import { labelAt } from '../lettering/label.ts';
import type { Lettered } from '../lettering/lettered.ts';
import type { Lettering } from '../lettering/lettering.ts';
import type { ClosedSpan } from './closedSpans.ts';
import { tapeLevels } from './tapeLevels.ts';
import type { TapePiece } from './tapePiece.ts';
import { xAt, type TapeReach } from './tapeReach.ts';
import { phrase } from '../../phrases/phrase.ts';

const { fence, gateName, bodyTop, bodyBottom } = tapeLevels;

/** The hatched band lies about the fence and reaches down to the tape. */
const top = fence - 0.11;
/** Between two lines of its hatching, paper inches. */
const apart = 0.07;

/** Lines that lean to one side across a band, to be clipped to it. */
const leaning = (x: number, width: number, lean: 1 | -1) => {
  const height = bodyTop - top;
  const count = Math.ceil((width + height) / apart) + 1;
  return Array.from({ length: count }, (_, n) => {
    const foot = x + n * apart - (lean > 0 ? height : 0);
    const [from, to] = lean > 0 ? [foot, foot + height] : [foot, foot - height];
    return [
      { x: from, y: bodyTop },
      { x: to, y: top },
    ] as const;
  });
};

/** Level lines from end to end of a band. */
const levelled = (x: number, width: number) =>
  Array.from({ length: Math.floor((bodyTop - top) / apart) }, (_, n) => {
    const y = bodyTop - (n + 1) * apart;
    return [
      { x, y },
      { x: x + width, y },
    ] as const;
  });

const hatched = ({ ink, hatch }: ClosedSpan, x: number, width: number): Atom[] => {
  const band = rectangleOutline({ x, y: top }, width, bodyTop - top);
  const lines =
    hatch === 'level'
      ? levelled(x, width)
      : [...leaning(x, width, 1), ...(hatch === 'cross' ? leaning(x, width, -1) : [])];
  const ends = [x, x + width].map(
    (at) =>
      [
        { x: at, y: top },
        { x: at, y: bodyBottom },
      ] as const,
  );
  return [
    { do: 'fill', ink, opacity: 0.12, outline: band },
    {
      do: 'clip',
      outline: band,
      atoms: [
        { do: 'stroke', pen: { ink, width: 0.008, dash: [] }, outline: segmentsOutline(lines) },
      ],
    },
    {
      do: 'stroke',
      pen: { ink, width: 0.01, dash: [0.05, 0.03] },
      outline: segmentsOutline(ends),
    },
  ];
};

/** The name over the band: on its middle, or a little aside where another name is in the way. */
const named = (span: ClosedSpan, middle: number, room: Lettering): Lettered['texts'] | null => {
  const style = { text: span.name, size: 0.141, weight: 'bold', ink: span.ink } as const;
  for (const y of [gateName + 0.17, gateName]) {
    for (const shift of [0, 0.15, -0.15, 0.3, -0.3]) {
      const { box, texts } = labelAt(style, { x: middle + shift, y }, radians(0));
      if (!room.isFree(box)) continue;
      room.take(box);
      return texts;
    }
  }
  return null;
};

/**
 * Ground of a piece in which no hole may be dug or no high fence stand: hatched over the tape in the colour of
 * what is there, with its name where there is room; what finds none is left with its readings.
 */
export const tapeClosed = (
  { run, hook }: TapePiece,
  reach: TapeReach,
  span: ClosedSpan,
  { style, room }: { style: LengthStyle; room: Lettering },
): Lettered => {
  const { from, to } = span;
  const [x, end] = [xAt(reach, from), xAt(reach, to)];
  const lines = hatched(span, x, end - x);
  const texts = named(span, (x + end) / 2, room);
  if (texts !== null) return { lines, texts, left: [] };
  const [low, high] = [from, to]
    .map((station) => fromHook(run, station, hook))
    .toSorted((a, b) => a - b)
    .map((reading) => formatLength(reading, style));
  return { lines, texts: [], left: [phrase`${span.name} from ${low ?? ''} to ${high ?? ''}`] };
};
