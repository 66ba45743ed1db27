import { trackLength, type Track } from '../geometry/track.ts';
import { distance } from '../geometry/distance.ts';
import { inches, type Inches } from '../units/inches.ts';

/** Less than this is drawn straight: no tape shows it on a leg (1/64 in). */
const straight = 1 / 64;

/** How far round an arc goes from its start to its end, radians: to the left above 0. */
const roundOf = ({ start, end, bow }: Track<'site'>): number => {
  const chord = distance(start, end);
  return bow === 0 || chord === 0 ? 0 : 4 * Math.atan((2 * bow) / chord);
};

const bowOf = (chord: number, round: number): Inches => {
  const bow = (chord / 2) * Math.tan(round / 4);
  return inches(Math.abs(bow) < straight ? 0 : bow);
};

/**
 * The bows of the two parts of a leg that is parted by a mark: together they go round as far as the
 * leg did, so that with a mark on the leg they are of its radius. `along` in inches from its start.
 */
export const splitBows = (
  whole: Track<'site'>,
  along: number,
  chords: readonly [number, number],
): readonly [Inches, Inches] => {
  const length = trackLength(whole);
  const share = length === 0 ? 0 : along / length;
  const round = roundOf(whole);
  return [bowOf(chords[0], round * share), bowOf(chords[1], round * (1 - share))];
};

/** As far round as an arc may go when two are joined: most of a circle. */
const mostRound = 1.75 * Math.PI;

/**
 * The bow of the leg that two make: where both are curved to the same side, as far round as both were
 * together; else it is straight. `chord` in inches.
 */
export const joinedBow = (before: Track<'site'>, after: Track<'site'>, chord: number): Inches => {
  const [a, b] = [roundOf(before), roundOf(after)];
  if (a * b <= 0) return inches(0);
  const round = Math.sign(a) * Math.min(mostRound, Math.abs(a + b));
  return bowOf(chord, round);
};
