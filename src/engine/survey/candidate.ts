import type { SitePoint } from '../../geometry/point.ts';
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
  /** What it was said to be worth. */
  readonly worth: number;
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

/** Marks that tapes could be pulled between, in the order of their ids, and what is to be known for that. */
export interface Field {
  readonly marks: readonly (readonly [MarkId, SitePoint])[];
  readonly taped: ReadonlyMap<MarkId, ReadonlySet<MarkId>>;
  readonly trusts: Trusts;
}

/** The field of marks where they stand, some of which are taped already. */
export const fieldOf = (marks: Places, sightings: readonly Sighting[], trusts: Trusts): Field => ({
  marks: [...marks].toSorted(([a], [b]) => (a < b ? -1 : 1)),
  taped: tapedTo(sightings),
  trusts,
});

/** What a tape is worth, by the numbers of its marks in the field, how long it is and how far it is trusted. */
type Worth = (from: number, to: number, length: number, sigma: number) => number;

const asGood: Worth = () => 1;

/**
 * Every tape between two marks of a field that was not pulled yet and is worth more than the `least`, in
 * the order of their ids.
 */
export const candidatesAmong = (
  { marks, taped, trusts }: Field,
  worthOf: Worth = asGood,
  least = 0,
): Candidate[] => {
  const found: Candidate[] = [];
  for (let n = 0; n < marks.length; n += 1) {
    const [from, a] = marks[n]!;
    const known = taped.get(from);
    for (let m = n + 1; m < marks.length; m += 1) {
      const [to, b] = marks[m]!;
      const length = Math.sqrt((b.x - a.x) ** 2 + (b.y - a.y) ** 2);
      if (length < shortest) continue;
      const sigma = tapeSigma(length, trusts);
      const worth = worthOf(n, m, length, sigma);
      if (worth > least && known?.has(to) !== true) found.push({ from, to, length, sigma, worth });
    }
  }
  return found;
};
