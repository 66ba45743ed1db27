import { formatBearing } from '../../units/formatBearing.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { radians, type Radians } from '../../units/radians.ts';
import type { Call, CurveTold } from './call.ts';
import type { CallCurve, Course } from './course.ts';
import { degreeText } from './curveDegree.ts';
import { allowedOff, curveFaults } from './curveFaults.ts';
import { toldTogether } from './curveTold.ts';
import { solveCurve } from './solveCurve.ts';
import { phrase } from '../../phrases/phrase.ts';

/** What the call before one says of it. */
export interface Before {
  /** How the course before leaves its end, clockwise from north; null where none was read. */
  readonly out: number | null;
  readonly next: CurveTold | null;
}

/** A course with what its call says twice and not alike, or leaves to be taken for granted. */
export interface Drawn {
  readonly course: Omit<Course, 'to'>;
  readonly doubts: readonly string[];
}

const turn = 2 * Math.PI;
const wrapped = (angle: number): Radians => radians(((angle % turn) + turn) % turn);

/** How far two directions lie apart, from 0 to half a turn. */
const apart = (a: number, b: number): number => Math.abs(wrapped(a - b + Math.PI) - Math.PI);

/** The hand of a curve: told, or by the way in which its hollow side or its centre lies. */
const sideOf = (told: CurveTold, out: number | null): CallCurve['side'] | null => {
  if (told.side !== null) return told.side;
  const hollow = told.concave ?? told.radial;
  const along = told.chord ?? told.tangent ?? out;
  if (hollow === null || along === null) return null;
  return Math.sin(hollow - along) > 0 ? 'right' : 'left';
};

/** The direction of a chord by each thing that tells it, the surest first. */
const chordsOf = (told: CurveTold, curve: CallCurve, out: number | null): readonly number[] => {
  const hand = curve.side === 'right' ? 1 : -1;
  const half = (hand * curve.delta) / 2;
  const { chord, radial, tangent, joins } = told;
  return [
    ...(chord === null ? [] : [chord]),
    ...(radial === null ? [] : [radial - (hand * Math.PI) / 2 + half]),
    ...(tangent === null ? [] : [tangent + half]),
    ...(out === null || joins === 'not tangent' ? [] : [out + half]),
  ];
};

const untold = ({ joins }: CurveTold): string =>
  joins === 'not tangent'
    ? phrase`is a curve that is not tangent to the course before: expected the bearing of its chord or of its radius`
    : phrase`is a curve that begins where no course before it was read: expected the bearing of its chord`;

/** What tells the direction of a chord otherwise than the surest does. */
const doubtsOf = (
  told: CurveTold,
  curve: CallCurve,
  chords: readonly number[],
): readonly string[] => {
  const [first = 0, ...others] = chords;
  const lone = told.chord === null && told.radial === null && told.tangent === null;
  if (lone && told.joins !== 'tangent') return [phrase`is taken as tangent to the course before`];
  const compared = told.joins === 'tangent' ? others : others.slice(0, countOf(told) - 1);
  return compared
    .filter((other) => apart(first, other) * curve.chord > allowedOff(curve.chord))
    .map(
      (other) =>
        phrase`its chord is drawn ${formatBearing(wrapped(first))}, what else is told of it makes that ${formatBearing(wrapped(other))}`,
    );
};

/** How many bearings of its own a curve has. */
const countOf = ({ chord, radial, tangent }: CurveTold): number =>
  [chord, radial, tangent].filter((one) => one !== null).length;

const curved = (own: CurveTold, { out, next }: Before, style: LengthStyle): Parsed<Drawn> => {
  const told = toldTogether(next, own);
  const measures = solveCurve(told.given);
  if (!measures.ok) return measures;
  const side = sideOf(told, out);
  if (side === null) {
    return unread(phrase`is a curve and does not say to which hand: expected left or right`);
  }
  const curve = { side, ...measures.value };
  const chords = chordsOf(told, curve, out);
  const [azimuth] = chords;
  if (azimuth === undefined) return unread(untold(told));
  return read({
    course: { azimuth: wrapped(azimuth), length: curve.chord, curve },
    doubts: [
      ...(told.degree === null ? [] : [degreeText(told.degree, style)]),
      ...curveFaults(told.given, curve, style),
      ...doubtsOf(told, curve, chords),
    ],
  });
};

/**
 * The course of a call where the calls before it are known. A curve runs by the bearing of its chord, of
 * its radius or of its tangent; where none is told it is tangent to the course before. What is told
 * twice is compared to how plats round. A reason lacks its subject.
 */
export const courseFrom = (call: Call, before: Before, style: LengthStyle): Parsed<Drawn> => {
  if (call.kind === 'curve') return curved(call.told, before, style);
  const { azimuth, length } = call;
  return read({ course: { azimuth, length, curve: null }, doubts: [] });
};
