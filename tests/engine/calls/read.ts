import type { Calls, CallPiece } from '../../../src/engine/calls/calls.ts';
import type { Course } from '../../../src/engine/calls/course.ts';
import { readCalls } from '../../../src/engine/calls/readCalls.ts';
import { traverse, type Traverse } from '../../../src/engine/calls/traverse.ts';
import { formatBearing } from '../../../src/units/formatBearing.ts';

/** A text of calls, which has to be one that can be read. */
export const callsOf = (text: string): Calls => {
  const calls = readCalls(text);
  if (!calls.ok) throw new Error(calls.reason);
  return calls.value;
};

export const walked = (text: string): Traverse => traverse(callsOf(text));

const feet = (inches: number): string => (inches / 12).toFixed(2);

/** A course in one line, in feet. */
export const courseLine = ({ azimuth, length, curve, to }: Course): string => {
  const round = curve === null ? '' : ` ${curve.side} R ${feet(curve.radius)} L ${feet(curve.arc)}`;
  return `${formatBearing(azimuth)} ${feet(length)}${round}${to === '' ? '' : ` to ${to}`}`;
};

const foundLine = ({ found }: CallPiece): string => {
  if (found.kind === 'course') return `${found.part} ${courseLine(found.course)}`;
  if (found.kind === 'start') return `start ${found.at}`;
  if (found.kind === 'area') return `area ${feet(found.area / 12)}`;
  return `${found.kind} ${found.reason}`;
};

/** What came of each piece: its line, what it is, and what is doubted. */
export const said = (text: string): string[] =>
  callsOf(text).pieces.map((piece) =>
    [`${piece.line} ${foundLine(piece)}`, ...piece.doubts].join(' | '),
  );
