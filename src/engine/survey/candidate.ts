import { distance } from '../../geometry/distance.ts';
import type { MarkId } from '../../site/ids.ts';
import type { Trusts } from '../../site/trusts.ts';
import { inches } from '../../units/inches.ts';
import type { Places } from './rows.ts';
import { tapeSigma, type Sighting } from './sighting.ts';

/** A tape that could be pulled between two marks. */
export interface Candidate {
  readonly from: MarkId;
  readonly to: MarkId;
  /** What it would read, inches, and how far it would be trusted. */
  readonly length: number;
  readonly sigma: number;
}

/** Nobody tapes less than this, inches. Ours. */
const shortest = 1;

/** A candidate as if it had been pulled. */
export const pulled = ({ from, to, length, sigma }: Candidate): Sighting => {
  const seen = { kind: 'tape', from, to, length: inches(length), trust: null, label: '' } as const;
  return { id: 'observation:next', seen, sigma };
};

/** To which marks each mark is taped. */
const tapedTo = (sightings: readonly Sighting[]): ReadonlyMap<MarkId, ReadonlySet<MarkId>> => {
  const known = new Map<MarkId, Set<MarkId>>();
  const note = (a: MarkId, b: MarkId): void => {
    const own = known.get(a);
    if (own === undefined) known.set(a, new Set([b]));
    else own.add(b);
  };
  for (const { seen } of sightings) {
    if (seen.kind !== 'tape') continue;
    note(seen.from, seen.to);
    note(seen.to, seen.from);
  }
  return known;
};

/** Every tape between two of these marks that was not pulled yet, in the order of their ids. */
export const candidatesAmong = (
  marks: Places,
  sightings: readonly Sighting[],
  trusts: Trusts,
): Candidate[] => {
  const known = tapedTo(sightings);
  const all = [...marks].toSorted(([a], [b]) => (a < b ? -1 : 1));
  const found: Candidate[] = [];
  for (const [n, [from, a]] of all.entries()) {
    const taped = known.get(from);
    for (let m = n + 1; m < all.length; m += 1) {
      const [to, b] = all[m]!;
      const length = distance(a, b);
      if (length < shortest || taped?.has(to) === true) continue;
      found.push({ from, to, length, sigma: tapeSigma(length, trusts) });
    }
  }
  return found;
};
