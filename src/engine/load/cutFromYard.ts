import type { Offcut } from '../../site/offcut.ts';
import type { Site } from '../../site/site.ts';
import type { Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { lengthOfSteps } from '../../units/lengthOfSteps.ts';
import type { CutTicket } from '../cut/cutTicket.ts';
import { stepsDown } from '../cut/stepsOf.ts';
import type { Sticks } from '../cut/ticketOf.ts';
import type { LoadTicket } from './load.ts';

/** What is to be cut of one sort of stick or roll, whatever of it lies in the yard. */
export interface Uncut extends Omit<LoadTicket, 'ticket'> {
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

/**
 * Tickets in their order, each with what lies in the yard of its code and no ticket before it cuts up: two
 * pipes of one size share a code.
 */
export const cutFromYard = (
  asked: readonly Uncut[],
  { offcuts, lengths }: Pick<Site, 'offcuts' | 'lengths'>,
): LoadTicket[] => {
  const there = Object.values<Offcut>(offcuts);
  return asked.reduce<LoadTicket[]>((made, { cut, ...named }) => {
    const own = there.filter(({ of }) => of === named.code);
    const before = made.filter(({ code }) => code === named.code);
    const left = leftAfter(own, before, lengths);
    return [...made, { ...named, ticket: cut(left) }];
  }, []);
};
