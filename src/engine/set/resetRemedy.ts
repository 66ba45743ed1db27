import { inches } from '../../units/inches.ts';
import { gapAt } from '../gate/gapAt.ts';
import type { Remedy } from './remedy.ts';
import { hungEnd, postName } from './postName.ts';
import { writer, type SetCase } from './setCase.ts';
import { holdsAt } from './shortfall.ts';
import { phrase } from '../../phrases/phrase.ts';

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

/** The opening to set it to: the target, or the nearest that holds for sure where that does not. */
const goalOf = ({ opening: { target, holdsFrom, holdsTo } }: SetCase): number =>
  holdsFrom > holdsTo ? target : Math.min(holdsTo, Math.max(holdsFrom, target));

/** How far the face of the post has to go, away from the opening, at its foot and at its top. */
const movesOf = (set: SetCase, end: End) => {
  const { asSet } = set;
  const goal = goalOf(set);
  const [own, other] = [asSet.leans[end] ?? 0, asSet.leans[otherEnd[end]] ?? 0];
  // a foot that nobody measured stands where the leans of both tops leave it
  const foot = asSet.bottom ?? asSet.top + own + other;
  const move = goal - foot;
  return { foot: move, top: move + own, after: [inches(goal), inches(goal - other)] as const };
};

const told = (move: number, write: (length: number) => string): string => {
  const size = write(Math.abs(move));
  if (size === write(0)) return phrase`stays`;
  return move > 0
    ? phrase`${size} out, away from the opening`
    : phrase`${size} in, into the opening`;
};

/** To set a post again so that the opening is as planned: which, which way and how far. */
export const resetRemedy = (set: SetCase): Remedy => {
  const write = writer(set);
  const end = postToReset(set);
  const { foot, top, after } = movesOf(set, end);
  const [low, high] = [told(foot, write), told(top, write)];
  const name = postName(set.gate, end);
  const how = low === high ? low : phrase`at the ground ${low}; at the top ${high}`;
  const enough = holdsAt(set.opening, after);
  const may = !enough && after.every((width) => gapAt(set.opening, width).by === 0);
  return {
    kind: 'reset',
    what: phrase`Set ${name} again, plumb, measured at its face: ${how}.${may ? phrase` Then measure the hinges.` : ''}`,
    takesUp: 'unlimited',
    enough,
    working: phrase`to an opening of ${write(after[0])}`,
    post: end,
  };
};
