import { isMetric } from '../../units/isMetric.ts';
import type { Opening } from '../../engine/opening.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { radians } from '../../units/radians.ts';
import type { Atom } from '../atom.ts';
import type { Ink } from '../ink.ts';
import { hatchLines } from '../explode/hatchLines.ts';
import type { Outline } from '../outline.ts';
import { polylineOutline, rectangleOutline, segmentsOutline } from '../explode/polylineOutline.ts';
import { bestOf } from '../lettering/bestOf.ts';
import { heldTexts } from './heldTexts.ts';
import type { SetMark } from './setMarks.ts';
import { labelAt, labelSize, type LabelStyle } from '../lettering/label.ts';
import { makeLettering, type Lettering } from '../lettering/lettering.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Heights in paper inches from the top of the ruler, and of the whole of it. */
const rulerHeight = 1.1;
const levels = {
  above: 0.07,
  upper: 0.25,
  top: 0.42,
  bottom: 0.66,
  below: 0.83,
  lower: 1.02,
} as const;

/** Other widths that the ruler can show beside the target. */
export interface Marks {
  /** The size the gate is called by; shown so that nobody sets the posts to it. */
  readonly nominal?: Inches;
  /** What was set in the ground. */
  readonly set?: readonly SetMark[];
}

interface Scale {
  readonly low: number;
  readonly high: number;
  readonly xOf: (value: number) => number;
}

/** Ground inches that ticks may stand apart. */
const stepsOf = ({ system }: LengthStyle): readonly number[] =>
  isMetric(system)
    ? [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000].map((mm) => mm / 25.4)
    : [1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2, 6, 12, 24, 60, 120];

/** Shown on each side of what holds, as a share of its width, and at least so many inches. */
const marginShare = 0.3;
const leastMargin = 0.5;
/** A width farther off than this many times what holds is named, not drawn to scale. */
const farthest = 3;

const scaleOf = (opening: Opening, marks: Marks, width: number): Scale => {
  const { holdsFrom, holdsTo, mayFrom, mayTo, target } = opening;
  const own = [holdsFrom, holdsTo, mayFrom, mayTo, target];
  const [low, high] = [Math.min(...own), Math.max(...own)];
  const reach = Math.max(1, high - low) * farthest;
  const near = [marks.nominal, ...(marks.set ?? []).map((mark) => mark.width)].filter(
    (value) => value !== undefined && value > low - reach && value < high + reach,
  ) as number[];
  const [from, to] = [Math.min(low, ...near), Math.max(high, ...near)];
  const margin = Math.max(leastMargin, (to - from) * marginShare);
  const span = to - from + 2 * margin;
  return {
    low: from - margin,
    high: to + margin,
    xOf: (value) => ((value - from + margin) / span) * width,
  };
};

const ticksOf = ({ low, high, xOf }: Scale, style: LengthStyle): Atom[] => {
  const apart = xOf(1) - xOf(0);
  const lines = [0.07, 0.3].flatMap((room, rank) => {
    const step = stepsOf(style).find((size) => size * apart >= room) ?? high - low;
    const first = Math.ceil(low / step);
    const count = Math.max(0, Math.floor(high / step) - first + 1);
    return Array.from({ length: count }, (_, n) => {
      const x = xOf((first + n) * step);
      return [
        { x, y: levels.bottom },
        { x, y: levels.bottom - (rank === 0 ? 0.06 : 0.12) },
      ] as const;
    });
  });
  return [
    {
      do: 'stroke',
      pen: { ink: 'line', width: 0.007, dash: [] },
      outline: segmentsOutline(lines),
    },
  ];
};

const pointer = (x: number, up: 1 | -1, ink: Ink): Atom => {
  const tip = up === 1 ? levels.top : levels.bottom;
  const back = tip - up * 0.08;
  return {
    do: 'fill',
    ink,
    opacity: 1,
    outline: polylineOutline(
      [
        { x, y: tip },
        { x: x - 0.055, y: back },
        { x: x + 0.055, y: back },
      ],
      true,
    ),
  };
};

/** A text at a width, moved in so that it does not leave the ruler; on the second row if need be. */
const name = (
  look: LabelStyle,
  x: number,
  { rows, width, room }: { rows: readonly number[]; width: number; room: Lettering },
): readonly Atom[] => {
  const half = labelSize(look).width / 2;
  const at = Math.min(width - half, Math.max(half, x));
  const label = bestOf(
    room,
    rows.flatMap((y) =>
      [0, half, -half, 2 * half, -2 * half].map((shift) =>
        labelAt(look, { x: at + shift, y }, radians(0)),
      ),
    ),
  );
  if (label === null) return [];
  room.take(label.box);
  return label.texts;
};

/** Ends of ranges nearer than this are one, inches. */
const dust = 1e-6;

/** Where it may hold: hatched, lighter than where it holds for sure. */
const hatched = (outline: Outline, [from, to]: readonly [number, number]): Atom[] => {
  const corners = [
    { x: from, y: levels.top },
    { x: to, y: levels.bottom },
  ];
  const pen = { ink: 'sewer', width: 0.008, dash: [] } as const;
  const lines: Atom = { do: 'stroke', pen, outline: hatchLines(corners, 'diagonal', null) };
  return [
    { do: 'fill', ink: 'sewer', opacity: 0.1, outline },
    { do: 'clip', outline, atoms: [lines] },
  ];
};

interface Named {
  readonly at: (value: number) => number;
  readonly write: (value: number) => string;
  readonly place: Parameters<typeof name>[2];
}

/** The ends of what may hold and of what is likely to, named as far as there is room. */
const beyondSure = (opening: Opening, { at, write, place }: Named): Atom[] => {
  const { mayFrom, mayTo, likelyFrom, likelyTo } = opening;
  const plain = (text: string): LabelStyle => ({ ...look(text, 'dimension'), weight: 'regular' });
  const ends = [
    [mayFrom, phrase`may from ${write(mayFrom)}`],
    [mayTo, phrase`may to ${write(mayTo)}`],
    [likelyFrom, phrase`likely from ${write(likelyFrom)}`],
    [likelyTo, phrase`likely to ${write(likelyTo)}`],
  ] as const;
  const likely = [likelyFrom, likelyTo].map(
    (value) =>
      [
        { x: at(value), y: levels.top },
        { x: at(value), y: levels.bottom },
      ] as const,
  );
  const pen = { ink: 'dimension', width: 0.008, dash: [0.03, 0.03] } as const;
  return [
    { do: 'stroke', pen, outline: segmentsOutline(likely) },
    ...ends.flatMap(([value, text]) => name(plain(text), at(value), place)),
  ];
};

const look = (text: string, ink: Ink): LabelStyle => ({ text, size: 0.141, weight: 'bold', ink });

/**
 * A ruler of clear widths about an opening, stretched until a fraction of an inch can be seen: the
 * band in which the latch catches for sure, solid, and where it may, hatched; the ends of both, the
 * marks between which it is likely, the target, and the nominal and the set width where they are
 * given. Where nothing holds for sure it says so in place of the band.
 */
export const openingRuler = (
  opening: Opening,
  style: LengthStyle,
  { width, nominal, set = [] }: Marks & { readonly width: number },
): Atom[] => {
  const { target, holdsFrom, holdsTo, mayFrom, mayTo } = opening;
  const scale = scaleOf(opening, { ...(nominal === undefined ? {} : { nominal }), set }, width);
  const { low, high, xOf } = scale;
  const write = (value: number): string => formatLength(inches(value), style);
  const room = makeLettering({ minX: 0, minY: 0, maxX: width, maxY: rulerHeight + 0.02 }, []);
  const held = heldTexts(opening, style);
  const at = (value: number): number => xOf(Math.min(high, Math.max(low, value)));
  const above = { rows: [levels.upper, levels.above], width, room };
  const below = { rows: [levels.below, levels.lower], width, room };
  const others = [
    ...set.map(({ text, width: value }) => ({ value, text, ink: 'selected' as const })),
    ...(nominal === undefined
      ? []
      : [{ value: nominal, text: phrase`called ${write(nominal)}`, ink: 'dimension' as const }]),
  ];
  const tall = levels.bottom - levels.top;
  const bandOf = (from: number, to: number) =>
    rectangleOutline({ x: at(from), y: levels.top }, at(to) - at(from), tall);
  const wider = mayFrom < holdsFrom - dust || mayTo > holdsTo + dust;
  const refusal = look(phrase`no width holds for sure: measure hinges and leaves`, 'stop');
  const body = rectangleOutline({ x: 0, y: levels.top }, width, tall);
  return [
    { do: 'fill', ink: 'tape', opacity: 1, outline: body },
    ...(wider ? hatched(bandOf(mayFrom, mayTo), [at(mayFrom), at(mayTo)]) : []),
    ...(held === null
      ? []
      : [
          { do: 'fill', ink: 'sewer', opacity: 0.35, outline: bandOf(holdsFrom, holdsTo) } as const,
        ]),
    ...ticksOf(scale, style),
    { do: 'stroke', pen: { ink: 'line', width: 0.01, dash: [] }, outline: body },
    pointer(at(target), 1, 'gate'),
    ...name(look(phrase`hold ${write(target)}`, 'gate'), at(target), above),
    ...(held === null
      ? name(refusal, width / 2, below)
      : (
          [
            [phrase`from ${held.from}`, holdsFrom],
            [phrase`to ${held.to}`, holdsTo],
          ] as const
        ).flatMap(([text, value]) => [
          pointer(at(value), -1, 'text'),
          ...name(look(text, 'text'), at(value), below),
        ])),
    ...others.flatMap(({ value, text, ink }) => [
      pointer(at(value), 1, ink),
      ...name(look(text, ink), at(value), above),
    ]),
    ...(wider ? beyondSure(opening, { at, write, place: below }) : []),
  ];
};
