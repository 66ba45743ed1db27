import { radians } from '../../units/radians.ts';
import type { LengthSystem } from '../../units/lengthStyle.ts';
import type { Atom, Text } from '../atom.ts';
import { polylineOutline, rectangleOutline, segmentsOutline } from '../explode/polylineOutline.ts';
import { usualCost, weigh } from '../lettering/coverCost.ts';
import type { Lettering } from '../lettering/lettering.ts';
import { textBox } from '../lettering/textBox.ts';
import { tapeLevels } from './tapeLevels.ts';
import { hookStation, type TapePiece } from './tapePiece.ts';
import { xAt, type TapeReach } from './tapeReach.ts';
import { tapeSteps } from './tapeSteps.ts';

const { bodyTop, bodyBottom } = tapeLevels;

const thin = { ink: 'line', width: 0.007, dash: [] } as const;

/** How far small and large ticks reach into the tape. */
const ticks = { small: 0.06, large: 0.11 } as const;

/** Every multiple of `step` between two readings, as readings. */
const multiples = (from: number, to: number, step: number): number[] => {
  const first = Math.ceil(from / step - 1e-9);
  const count = Math.floor(to / step + 1e-9) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, n) => (first + n) * step);
};

const number = (text: string, x: number): Text => ({
  do: 'text',
  text,
  at: { x, y: bodyBottom - 0.09 },
  size: 0.141,
  angle: radians(0),
  align: 'middle',
  baseline: 'middle',
  weight: 'regular',
  ink: 'dimension',
  halo: 'none',
});

const isOnTape = (text: Text, reach: TapeReach): boolean => {
  const half = textBox(text).halfWidth + 0.03;
  return text.at.x - half > reach.x && text.at.x + half < xAt(reach, reach.to);
};

/** A torn edge where the tape goes on in another row. */
const tear = (x: number, side: 1 | -1): Atom => {
  const step = (bodyBottom - bodyTop + 0.08) / 6;
  const points = Array.from({ length: 7 }, (_, n) => ({
    x: x + (n % 2 === 0 ? 0 : side * 0.05),
    y: bodyTop - 0.04 + n * step,
  }));
  return { do: 'stroke', pen: thin, outline: polylineOutline(points, false) };
};

/** The claw at the end of the tape that is hooked. */
const claw = (x: number, side: 1 | -1): Atom => ({
  do: 'stroke',
  pen: { ink: 'line', width: 0.03, dash: [] },
  outline: polylineOutline(
    [
      { x: x + side * 0.02, y: bodyTop - 0.06 },
      { x: x - side * 0.02, y: bodyTop - 0.06 },
      { x: x - side * 0.02, y: bodyBottom + 0.06 },
      { x: x + side * 0.05, y: bodyBottom + 0.06 },
    ],
    false,
  ),
});

/** What stands at one end of the drawn tape: its claw, a clean cut, or a tear. */
const endOf = (piece: TapePiece, reach: TapeReach, end: 'from' | 'to'): Atom[] => {
  const station = reach[end];
  const side = end === 'from' ? 1 : -1;
  const x = xAt(reach, station);
  if (station === hookStation(piece)) return [claw(x, side)];
  const whole = end === 'from' ? piece.first === 0 : piece.last >= piece.run.posts.length - 1;
  return whole ? [] : [tear(x, side === 1 ? -1 : 1)];
};

/**
 * The steel tape of one piece: its body, small and large ticks counted from the hook, numbers as
 * far as there is room, and the claw where it is hooked.
 */
export const tapeBody = (
  piece: TapePiece,
  reach: TapeReach,
  system: LengthSystem,
  room: Lettering,
): Atom[] => {
  const { small, large, write } = tapeSteps(reach.scale, system);
  const zero = hookStation(piece);
  const readings = [Math.abs(reach.from - zero), Math.abs(reach.to - zero)] as const;
  const [low, high] = [Math.min(...readings), Math.max(...readings)];
  const xOf = (reading: number): number =>
    xAt(reach, piece.hook === 'start' ? zero + reading : zero - reading);
  const tickAt = (reading: number, length: number) =>
    [
      { x: xOf(reading), y: bodyTop },
      { x: xOf(reading), y: bodyTop + length },
    ] as const;
  const majors = multiples(low, high, large);
  const numbers = majors
    .filter((reading) => reading > 0)
    .map((reading) => number(write(reading), xOf(reading)))
    .filter((text) => {
      if (!isOnTape(text, reach)) return false;
      const box = textBox(text);
      return room.isFree(box) && weigh(room.covers(box), usualCost) === 0;
    });
  for (const text of numbers) room.take(textBox(text));
  const width = (reach.to - reach.from) * reach.scale;
  const body = rectangleOutline({ x: reach.x, y: bodyTop }, width, bodyBottom - bodyTop);
  return [
    { do: 'fill', ink: 'tape', opacity: 1, outline: body },
    {
      do: 'stroke',
      pen: thin,
      outline: segmentsOutline([
        ...multiples(low, high, small).map((reading) => tickAt(reading, ticks.small)),
        ...majors.map((reading) => tickAt(reading, ticks.large)),
      ]),
    },
    { do: 'stroke', pen: { ...thin, width: 0.012 }, outline: body },
    ...endOf(piece, reach, 'from'),
    ...endOf(piece, reach, 'to'),
    ...numbers,
  ];
};
