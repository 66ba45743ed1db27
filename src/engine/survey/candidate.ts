import { distance } from '../../geometry/distance.ts';
import type { MarkId } from '../../site/ids.ts';
import type { Trusts } from '../../site/trusts.ts';
import { inches } from '../../units/inches.ts';
import type { Places } from './rows.ts';
import { sigmaOf, type Sighting } from './sighting.ts';

/** A tape that could be pulled between two marks. */
export interface Candidate {
  readonly from: MarkId;
  readonly to: MarkId;
  /** What it would read, inches, and how far it would be trusted. */
  readonly length: number;
  readonly sighting: Sighting;
}

/** Nobody tapes less than this, inches. Ours. */
const shortest = 1;

const candidateOf = (from: MarkId, to: MarkId, length: number, trusts: Trusts): Candidate => {
  const seen = {
    kind: 'tape',
    from,
    to,
    length: inches(length),
    trust: null,
    label: '',
  } as const;
  return {
    from,
    to,
    length,
    sighting: { id: 'observation:next', seen, sigma: sigmaOf(seen, trusts) },
  };
};

/** Every tape between two of these marks that was not pulled yet, in the order of their ids. */
export const candidatesAmong = (
  marks: Places,
  sightings: readonly Sighting[],
  trusts: Trusts,
): Candidate[] => {
  const known = new Set(
    sightings.flatMap(({ seen }) =>
      seen.kind === 'tape' ? [[seen.from, seen.to].toSorted().join(' ')] : [],
    ),
  );
  const all = [...marks].toSorted(([a], [b]) => (a < b ? -1 : 1));
  return all.flatMap(([from, a], n) =>
    all.slice(n + 1).flatMap(([to, b]) => {
      const length = distance(a, b);
      if (length < shortest || known.has(`${from} ${to}`)) return [];
      return [candidateOf(from, to, length, trusts)];
    }),
  );
};
