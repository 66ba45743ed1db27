import { inches, type Inches } from '../../units/inches.ts';
import { lengthOfSteps } from '../../units/lengthOfSteps.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { cutStock } from './cutStock.ts';
import type { CutLength } from './cutTask.ts';
import type { CutTicket, TicketPiece, TicketStick } from './cutTicket.ts';
import { stepsDown, stepsUp } from './stepsOf.ts';

/** What there is to cut from: a stick as it is bought, offcuts of earlier jobs, what a cut takes. Inches. */
export interface Sticks {
  readonly stick: Inches;
  readonly offcuts: readonly { readonly length: Inches; readonly count: number }[];
  readonly kerf: Inches;
}

/** Things of one length in steps together, with their names in turn. */
const byLength = (pieces: readonly TicketPiece[], style: LengthStyle): Map<number, string[]> => {
  const found = new Map<number, string[]>();
  for (const { length, for: name } of pieces) {
    const steps = Math.max(1, stepsUp(length, style));
    const same = found.get(steps);
    if (same === undefined) found.set(steps, [name]);
    else same.push(name);
  }
  return found;
};

const summed = (lengths: readonly CutLength[]): CutLength[] => {
  const counts = new Map<number, number>();
  for (const { length, count } of lengths) {
    if (length > 0 && count > 0) counts.set(length, (counts.get(length) ?? 0) + count);
  }
  return [...counts].map(([length, count]) => ({ length, count }));
};

/** What is left of a stick: less the pieces and a cut after each of them but where nothing is left. */
const leftOf = (stick: number, pieces: readonly number[], kerf: number): number => {
  const used = pieces.reduce((sum, one) => sum + one, 0) + Math.max(0, pieces.length - 1) * kerf;
  return Math.max(0, stick - used - (stick > used ? kerf : 0));
};

/**
 * The cuts of pieces that have no joint, from as few bought sticks as can be. Lengths are taken up to whole
 * steps of the tape of `style`, sticks and offcuts down to them.
 */
export const ticketOf = (
  pieces: readonly TicketPiece[],
  { stick, offcuts, kerf }: Sticks,
  style: LengthStyle,
): CutTicket => {
  const names = byLength(pieces, style);
  const lengths = [...names.keys()].toSorted((a, b) => b - a);
  const cut = Math.max(0, stepsUp(kerf, style));
  const plan = cutStock({
    pieces: lengths.map((length) => ({ length, count: names.get(length)?.length ?? 0 })),
    stick: stepsDown(stick, style),
    offcuts: summed(
      offcuts.map(({ length, count }) => ({ length: stepsDown(length, style), count })),
    ),
    kerf: cut,
  });
  const long = (steps: number): Inches => lengthOfSteps(steps, style);
  const take = (length: number): TicketPiece => ({
    length: long(length),
    for: names.get(length)?.shift() ?? '',
  });
  const sticks = plan.ways.flatMap((way) =>
    Array.from({ length: way.times }, (): TicketStick => {
      const own = way.counts.flatMap((count, n) =>
        Array.from({ length: count }, () => lengths[n] ?? 0),
      );
      return {
        from: way.from,
        stick: long(way.stick),
        pieces: own.map(take),
        left: long(leftOf(way.stick, own, cut)),
      };
    }),
  );
  const tooLong = plan.tooLong.flatMap((n) => {
    const length = lengths[n] ?? 0;
    return (names.get(length) ?? []).map((name) => ({ length: long(length), for: name }));
  });
  return { sticks, bought: plan.bought, least: plan.least, tooLong, joints: 0 };
};

/** What is left of a stick in inches, in whole steps: for plans that are not made by `ticketOf`. */
export const leftIn = (stick: Inches, pieces: readonly TicketPiece[], kerf: Inches): Inches => {
  const used = pieces.reduce((sum, { length }) => sum + length, 0);
  const cuts = Math.max(0, pieces.length - 1) * kerf;
  const rest = stick - used - cuts;
  return inches(rest > kerf ? rest - kerf : 0);
};
