import type { Offcut } from '../../site/offcut.ts';
import type { Site } from '../../site/site.ts';
import type { Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { lengthOfSteps } from '../../units/lengthOfSteps.ts';
import type { Carry } from '../carry/carry.ts';
import type { CutTicket, TicketPiece } from '../cut/cutTicket.ts';
import { stepsDown } from '../cut/stepsOf.ts';
import type { Sticks } from '../cut/ticketOf.ts';
import type { LoadTicket } from './load.ts';

/** What is to be cut of one sort of stick or roll, whatever of it lies in the yard. */
export interface Uncut extends Omit<LoadTicket, 'ticket'> {
  /** All that `cut` follows from but for the offcuts and the style of lengths. */
  readonly from: readonly unknown[];
  readonly cut: (offcuts: Sticks['offcuts']) => CutTicket;
}

/** Lengths in whole steps that lie there, less those that tickets cut up. */
const leftAfter = (
  there: readonly Offcut[],
  tickets: readonly LoadTicket[],
  style: LengthStyle,
): Sticks['offcuts'] => {
  const counts = new Map<Inches, number>();
  for (const { length, count } of there) {
    const stick = lengthOfSteps(stepsDown(length, style), style);
    counts.set(stick, (counts.get(stick) ?? 0) + count);
  }
  for (const { from, stick } of tickets.flatMap(({ ticket }) => ticket.sticks)) {
    if (from === 'offcut') counts.set(stick, (counts.get(stick) ?? 0) - 1);
  }
  return [...counts].flatMap(([length, count]) =>
    count > 0 && length > 0 ? [{ length, count }] : [],
  );
};

/** Pieces as a list of their lengths and names, for `from`. */
export const piecesTold = (pieces: readonly TicketPiece[]): readonly unknown[] =>
  pieces.flatMap(({ length, for: name }) => [length, name]);

/**
 * Tickets in their order, each with what lies in the yard of its code and no ticket before it cuts up: two
 * pipes of one size share a code.
 */
export const cutFromYard = (
  asked: readonly Uncut[],
  { offcuts, lengths }: Pick<Site, 'offcuts' | 'lengths'>,
  carry: Carry,
): LoadTicket[] => {
  const known = carry.shelf<CutTicket>('cut ticket');
  const there = Object.values<Offcut>(offcuts);
  return asked.reduce<LoadTicket[]>((made, { cut, from, ...named }) => {
    const own = there.filter(({ of }) => of === named.code);
    const before = made.filter(({ code }) => code === named.code);
    const left = leftAfter(own, before, lengths);
    const yard = left.flatMap(({ length, count }) => [length, count]);
    const id = `${named.kind} ${named.code} ${named.item}`;
    const ticket = known.take(id, [lengths, yard.length, ...yard, ...from], () => cut(left));
    return [...made, { ...named, ticket }];
  }, []);
};
