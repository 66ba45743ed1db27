import { slack } from '../../geometry/tolerance.ts';
import type { Gate } from '../../site/gate.ts';
import type { SignOff } from '../../site/signOff.ts';
import type { Rested } from './restsOn.ts';

/** One thing that is not as it was signed; null where it was not there, or is there no more. */
export interface SignedChange {
  readonly what: string;
  readonly from: number | string | null;
  readonly to: number | string | null;
}

/** Whether an opening is signed off, and if the sign-off is void: what changed since. */
export type Standing =
  | { readonly kind: 'unsigned' }
  | { readonly kind: 'signed'; readonly signOff: SignOff }
  | {
      readonly kind: 'void';
      readonly signOff: SignOff;
      readonly changes: readonly SignedChange[];
    };

const same = (a: number | string | null, b: number | string | null): boolean =>
  typeof a === 'number' && typeof b === 'number' ? Math.abs(a - b) <= slack : a === b;

/** What differs between two states of what an opening rests on, in the order of the later one. */
export const changesBetween = (then: Rested, now: Rested): readonly SignedChange[] => {
  const at = (rested: Rested, what: string): number | string | null =>
    Object.hasOwn(rested, what) ? (rested[what] ?? null) : null;
  const names = [...new Set([...Object.keys(now), ...Object.keys(then)])];
  return names
    .map((what) => ({ what, from: at(then, what), to: at(now, what) }))
    .filter(({ from, to }) => !same(from, to));
};

/** How a gate's sign-off stands, with what its opening rests on now. */
export const standingOf = ({ signed }: Pick<Gate, 'signed'>, now: Rested): Standing => {
  if (signed === null) return { kind: 'unsigned' };
  const changes = changesBetween(signed.rested, now);
  if (changes.length === 0) return { kind: 'signed', signOff: signed };
  return { kind: 'void', signOff: signed, changes };
};
