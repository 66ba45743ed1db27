import { inches, type Inches } from '../../units/inches.ts';
import type { Remedy } from './remedy.ts';
import { hungEnd, postName } from './postName.ts';
import { writer, type SetCase } from './setCase.ts';
import { holdsAt } from './shortfall.ts';

type End = 'start' | 'end';

/**
 * A post leans when its top is off by this, inches: the trade measures to 1/8 in either way
 * (common practice, no published source), and less is not told from it.
 */
const leaning = 1 / 8;

const otherEnd = { start: 'end', end: 'start' } as const;

/** The post that leans, of two the one that leans more; else the one that no leaf hangs on. */
const postToReset = ({ gate, asSet: { leans } }: SetCase): End => {
  const [start, end] = [Math.abs(leans.start ?? 0), Math.abs(leans.end ?? 0)];
  if (Math.max(start, end) < leaning) return otherEnd[hungEnd(gate)];
  return start > end ? 'start' : 'end';
};

/** How far the face of the post has to go, away from the opening, at its foot and at its top. */
const movesOf = ({ opening, asSet }: SetCase, end: End) => {
  const [own, other] = [asSet.leans[end] ?? 0, asSet.leans[otherEnd[end]] ?? 0];
  // a foot that nobody measured stands where the leans of both tops leave it
  const foot = asSet.bottom ?? asSet.top + own + other;
  const move = opening.target - foot;
  return { foot: move, top: move + own, after: [opening.target, opening.target - other] as const };
};

const told = (move: number, write: (length: number) => string): string => {
  const size = write(Math.abs(move));
  if (size === write(0)) return 'stays';
  return `${size} ${move > 0 ? 'out, away from the opening' : 'in, into the opening'}`;
};

/** To set a post again so that the opening is as planned: which, which way and how far. */
export const resetRemedy = (set: SetCase): Remedy => {
  const write = writer(set);
  const end = postToReset(set);
  const { foot, top, after } = movesOf(set, end);
  const [low, high] = [told(foot, write), told(top, write)];
  const name = postName(set.gate, end);
  const how = low === high ? low : `at the ground ${low}; at the top ${high}`;
  const widths: readonly Inches[] = after.map(inches);
  return {
    kind: 'reset',
    what: `Set ${name} again, plumb, measured at its face: ${how}.`,
    takesUp: 'unlimited',
    enough: holdsAt(set.opening, widths),
    working: `the opening to hold is ${write(set.opening.target)}`,
    post: end,
  };
};
