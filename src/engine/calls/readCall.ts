import { farthest } from '../../geometry/tolerance.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { smallLetters } from '../../units/plainDeed.ts';
import type { Call } from './call.ts';
import { curveAhead } from './curveAhead.ts';
import { curveTold } from './curveTold.ts';
import { figuresOf, type Figure } from './figure.ts';
import { figuresIn } from './figuresIn.ts';
import { readStraight } from './readStraight.ts';
import { withoutRepeats } from './withoutRepeats.ts';
import { phrase } from '../../phrases/phrase.ts';

const curveWord =
  /(?<![a-z])(?:curv(?:e|es|ing|ed)(?![a-z])|arc(?![a-z])|radius|chord|concave|delta(?= ?(?:[=:\d]|angle|of))|(?:cb|r|rad) ?[=:])|δ|central angle/;

/** The curve before a course that goes straight on from it. */
const oldCurve =
  /tangent(?:ial)?(?:ly)? (?:to|with) (?:the |said |last |above |mentioned |described )*(?:last |said )?curve/g;

/** Why one of the figures cannot be; null where they all can. */
const faultOf = (figures: readonly Figure[]): string | null => {
  for (const figure of figures) {
    if (figure.kind === 'bearing' && !figure.azimuth.ok) return figure.azimuth.reason;
    if (figure.kind === 'angle' && !figure.angle.ok) return figure.angle.reason;
    if (figure.kind !== 'length') continue;
    if (figure.length <= 0) return phrase`has a distance of nothing: expected one above zero`;
    if (figure.length > farthest)
      return phrase`has a distance of over ten miles: expected one side of a lot`;
  }
  return null;
};

/** Whether a call goes straight: its bearing and distance stand before it speaks of any curve. */
const isStraight = (text: string, figures: readonly Figure[]): boolean => {
  const own = text.replace(oldCurve, (words) => ' '.repeat(words.length));
  const curve = curveWord.exec(own)?.index ?? text.length;
  const [bearing] = figuresOf(figures, 'bearing');
  if (curve === text.length) return true;
  return (
    bearing !== undefined &&
    bearing.at < curve &&
    figures.some(
      ({ kind, at }) => kind !== 'bearing' && kind !== 'angle' && at > bearing.at && at < curve,
    ) &&
    curveAhead(text, bearing.end) !== null
  );
};

/**
 * Reads one call, written on one line, by itself: what is tangent to the course before it is told so.
 * `bare` is the inches of a distance without a unit. Null where it has neither bearing nor distance; a
 * reason without its subject where something is missing or cannot be.
 */
export const readCall = (line: string, bare: number): Parsed<Call | null> => {
  const text = smallLetters(line);
  const figures = withoutRepeats(text, figuresIn(text));
  const fault = faultOf(figures);
  if (fault !== null) return unread(fault);
  if (isStraight(text, figures)) return readStraight(line, figures, bare);
  const { told, unused } = curveTold(text, figures, bare);
  const last = figures.findLast(({ kind }) => kind !== 'number');
  return read({
    kind: 'curve',
    told,
    doubts: [],
    unused: unused.map(({ at, end }) => line.slice(at, end)),
    end: last?.end ?? 0,
  });
};
