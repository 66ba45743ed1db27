import { slack } from '../../geometry/tolerance.ts';
import { inches } from '../../units/inches.ts';
import { openingOf } from '../gate/openingOf.ts';
import type { Opening, Term } from '../opening.ts';
import type { Remedy } from './remedy.ts';
import { onTape, writer, type SetCase } from './setCase.ts';
import { gained, holdsAt, shortfallOf } from './shortfall.ts';
import { phrase } from '../../phrases/phrase.ts';

const fixed = (term: Term): Term =>
  term.spread === 'adjustable'
    ? { ...term, low: term.planned, high: term.planned, spread: 'uncertain' }
    : term;

/** The opening with everything that can be adjusted left as it is planned or was found. */
export const unadjusted = ({ terms }: Pick<Opening, 'terms'>): Opening =>
  openingOf(terms.map(fixed));

/** To adjust what can be, which way and how far; null where nothing can or needs to be. */
export const adjustRemedy = (set: SetCase): Remedy | null => {
  const { opening, widths } = set;
  const before = unadjusted(opening);
  const { way, by } = shortfallOf(before, widths);
  const reach = gained(before, opening, way);
  if (by <= slack || reach <= slack) return null;
  const write = writer(set);
  const amount = Math.min(onTape(set, by, 'ceil'), reach);
  const rolls = opening.terms.some(({ role }) => role === 'overlap');
  const more = way === 'take up';
  const what = rolls
    ? more
      ? phrase`Let the leaf stop ${write(amount)} further out on its rollers.`
      : phrase`Let the leaf stop ${write(amount)} sooner on its rollers.`
    : more
      ? phrase`Adjust the hinges: turn them out so that together they take ${write(amount)} more.`
      : phrase`Adjust the hinges: turn them in so that together they take ${write(amount)} less.`;
  return {
    kind: 'adjust',
    what,
    takesUp: reach,
    enough: holdsAt(opening, widths),
    working: more
      ? phrase`${write(inches(by))} is over; there is ${write(reach)} to adjust`
      : phrase`${write(inches(by))} is missing; there is ${write(reach)} to adjust`,
    post: null,
  };
};
