import { inches, type Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { lengthOfSteps } from '../../units/lengthOfSteps.ts';
import type { CutTicket, TicketPiece, TicketStick } from './cutTicket.ts';
import { openSticks, taken, type OpenStick, type OpenSticks } from './openSticks.ts';
import { stepsDown, stepsUp } from './stepsOf.ts';
import { leftIn, ticketOf, type Sticks } from './ticketOf.ts';

/** What is cut: rails that may have joints, and pieces that may have none. */
export interface Jointed {
  readonly rails: readonly TicketPiece[];
  readonly whole: readonly TicketPiece[];
  /** No piece of a rail is shorter than this, inches. */
  readonly least: Inches;
}

/** A rail in as few pieces as sticks allow, the short one no shorter than `least` where there is more than one. */
export const inFewest = (length: Inches, stick: Inches, least: Inches): Inches[] => {
  if (length <= stick) return [length];
  const full = Math.ceil(length / stick - 1e-9) - 1;
  const rest = length - full * stick;
  if (rest >= least || rest <= 0) {
    return [...Array.from({ length: full }, () => stick), inches(rest)];
  }
  const shortened = inches(stick - (least - rest));
  return [...Array.from({ length: full - 1 }, () => stick), shortened, least];
};

const inSteps = (pieces: readonly TicketPiece[], style: LengthStyle): TicketPiece[] =>
  pieces.map((piece) => ({
    ...piece,
    length: lengthOfSteps(Math.max(1, stepsUp(piece.length, style)), style),
  }));

/** Rails one after the other, each from what is left of the sticks before it; how many joints they have. */
const runThrough = ({ rails, least }: Jointed, stick: Inches, sticks: OpenSticks): number => {
  let joints = 0;
  for (const { length, for: name } of rails.toSorted((a, b) => b.length - a.length)) {
    for (let need: number = length; need > 1e-6;) {
      let from = sticks.best(need, least);
      if (from === null) {
        from = { from: 'bought', stick, pieces: [], left: stick };
        sticks.open(from);
      }
      const some = taken(from.left, need, least);
      if (some <= 0) break;
      sticks.cut(from, { length: inches(some), for: name });
      need -= some;
      if (need > 1e-6) joints += 1;
    }
  }
  return joints;
};

const boughtOf = (sticks: readonly { readonly from: TicketStick['from'] }[]): number =>
  sticks.filter(({ from }) => from === 'bought').length;

const openOffcuts = (
  { offcuts }: Sticks,
  used: readonly TicketStick[],
  style: LengthStyle,
): OpenStick[] => {
  const spent = used.filter(({ from }) => from === 'offcut').map(({ stick }) => stick);
  return offcuts
    .flatMap(({ length, count }) => Array.from({ length: count }, () => length))
    .flatMap((length): OpenStick[] => {
      const stick = lengthOfSteps(stepsDown(length, style), style);
      const at = spent.indexOf(stick);
      if (at >= 0) {
        spent.splice(at, 1);
        return [];
      }
      return stick <= 0 ? [] : [{ from: 'offcut', stick, pieces: [], left: stick }];
    });
};

/** How many ways of spreading the pieces without joints are tried. */
const mostSpreads = 12;

/**
 * Sticks with the pieces that have no joint, packed tight in some and one to a stick in the others, so that
 * what is left of those is long enough for rail: from all tight to none.
 */
const spreads = (
  tight: readonly TicketStick[],
  { stick, kerf }: Sticks,
): readonly OpenStick[][] => {
  const full = tight.toSorted((a, b) => a.left - b.left);
  const counts = new Set(
    Array.from({ length: mostSpreads + 1 }, (_, n) => Math.round((n * full.length) / mostSpreads)),
  );
  return [...counts].map((kept) => [
    ...full.slice(0, kept).map((one): OpenStick => ({ ...one, pieces: [...one.pieces] })),
    ...full.slice(kept).flatMap(({ from, stick: own, pieces }): OpenStick[] => {
      if (from === 'offcut') {
        return [{ from, stick: own, pieces: [...pieces], left: leftIn(own, pieces, kerf) }];
      }
      return pieces.map((piece) => ({
        from,
        stick,
        pieces: [piece],
        left: leftIn(stick, [piece], kerf),
      }));
    }),
  ]);
};

const throughPlan = (asked: Jointed, sticks: Sticks, style: LengthStyle): CutTicket => {
  const whole = ticketOf(asked.whole, sticks, style);
  const plans = spreads(whole.sticks, sticks).map((packed): CutTicket => {
    const offcuts = openOffcuts(sticks, whole.sticks, style);
    const open = openSticks([...packed, ...offcuts], sticks.kerf);
    const joints = runThrough(asked, sticks.stick, open);
    const used = open.all.filter(({ pieces }) => pieces.length > 0);
    return {
      sticks: used
        .map(({ from, stick, pieces, left }) => ({ from, stick, pieces, left: inches(left) }))
        // what lies in the yard first
        .toSorted((a, b) => Number(a.from === 'bought') - Number(b.from === 'bought')),
      bought: boughtOf(used),
      least: whole.least,
      tooLong: whole.tooLong,
      joints,
    };
  });
  const [best] = plans.toSorted((x, y) => x.bought - y.bought || x.joints - y.joints);
  return best ?? whole;
};

const total = (pieces: readonly { readonly length: Inches }[]): number =>
  pieces.reduce((sum, { length }) => sum + length, 0);

/** How long all offcuts are together from which something can be cut: rail in pieces of `least` or a whole piece. */
const usableOf = ({ rails, whole, least }: Jointed, { offcuts }: Sticks): number => {
  const shortest = Math.min(
    ...[...rails, ...whole].map(({ length }) => length),
    rails.length > 0 ? least : Infinity,
  );
  return offcuts.reduce(
    (sum, { length, count }) => (length < shortest ? sum : sum + length * count),
    0,
  );
};

/** As `jointedTicket`; everything in whole steps. */
const jointed = (asked: Jointed, sticks: Sticks, style: LengthStyle): CutTicket => {
  const { rails, whole } = asked;
  const { stick } = sticks;
  const split = rails.flatMap(({ length, for: name }) =>
    inFewest(length, stick, asked.least).map((piece) => ({ length: piece, for: name })),
  );
  const fewest = ticketOf([...split, ...whole], sticks, style);
  const material = Math.ceil(
    (total(rails) + total(whole) - usableOf(asked, sticks)) / stick - 1e-9,
  );
  const least = Math.max(0, material, ticketOf(whole, sticks, style).least);
  const joints = split.length - rails.length;
  if (fewest.bought <= least) return { ...fewest, least, joints };
  const through = throughPlan(asked, sticks, style);
  return through.bought < fewest.bought ? { ...through, least } : { ...fewest, least, joints };
};

/**
 * The cuts of rails that may be joined end to end, and of pieces that may not: with the fewest joints where
 * that needs no more sticks, else rail after rail from what the one before left over. No plan buys less
 * than the length of it all over the length of a stick, nor less than the pieces without joints do. Offcuts
 * stay in the yard where the plan with them would buy more than one without.
 */
export const jointedTicket = (asked: Jointed, given: Sticks, style: LengthStyle): CutTicket => {
  const sticks = {
    offcuts: given.offcuts,
    stick: lengthOfSteps(stepsDown(given.stick, style), style),
    kerf: lengthOfSteps(Math.max(0, stepsUp(given.kerf, style)), style),
  };
  const pieces = {
    rails: inSteps(asked.rails, style),
    whole: inSteps(asked.whole, style),
    least: asked.least,
  };
  const ticket = jointed(pieces, sticks, style);
  if (sticks.offcuts.length === 0 || ticket.bought <= ticket.least) return ticket;
  const without = jointed(pieces, { ...sticks, offcuts: [] }, style);
  return without.bought < ticket.bought ? { ...without, least: ticket.least } : ticket;
};
