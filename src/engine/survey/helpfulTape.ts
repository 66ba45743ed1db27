import { distance } from '../../geometry/distance.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { MarkId } from '../../site/ids.ts';
import type { Trusts } from '../../site/trusts.ts';
import { inches } from '../../units/inches.ts';
import { bodiesOf } from './bodies.ts';
import type { Network } from './networks.ts';
import { rowsOf, through } from './normal.ts';
import { sigmaOf, type Sighting } from './sighting.ts';
import { redundancyOf, strengthOf } from './strength.ts';

type Places = ReadonlyMap<MarkId, SitePoint>;

/** A tape that could be pulled, and how far off its length may be before, one standard deviation in inches. */
interface Candidate {
  readonly from: MarkId;
  readonly to: MarkId;
  readonly sighting: Sighting;
  readonly give: number;
}

/** Of many tapes the least certain are tried: fewer in a large network, where each costs more. */
const mostTried = (marks: number): number => (marks > 80 ? 4 : marks > 40 ? 10 : 30);

/** A reading of which the others show less than this is not checked. Ours, no published source. */
export const checkedFrom = 0.05;

const taped = ({ sightings }: Network): ReadonlySet<string> =>
  new Set(
    sightings.flatMap(({ seen }) =>
      seen.kind === 'tape' ? [[seen.from, seen.to].toSorted().join(' ')] : [],
    ),
  );

const candidatesIn = (network: Network, places: Places, trusts: Trusts): Candidate[] => {
  const strength = strengthOf(network, places);
  const known = taped(network);
  const at = (id: MarkId): SitePoint => places.get(id) ?? { x: 0, y: 0 };
  const ids = [...network.spots.keys()].toSorted();
  const all = ids.flatMap((from, n) =>
    ids.slice(n + 1).flatMap((to): Candidate[] => {
      const [a, b] = [places.get(from), places.get(to)];
      if (a === undefined || b === undefined || known.has(`${from} ${to}`)) return [];
      const length = distance(a, b);
      if (length < 1) return [];
      const seen = {
        kind: 'tape',
        from,
        to,
        length: inches(length),
        trust: null,
        label: '',
      } as const;
      const sighting = { id: 'observation:next', seen, sigma: sigmaOf(seen, trusts) } as const;
      const [row] = rowsOf({ ...network, sightings: [sighting] }, strength.columns, at);
      if (row === undefined || row.columns.length === 0) return [];
      const give = sighting.sigma * Math.sqrt(through(row, strength.covariance, strength.size));
      return [{ from, to, sighting, give }];
    }),
  );
  return all
    .toSorted((a, b) => b.give - a.give || lengthOf(a) - lengthOf(b))
    .slice(0, mostTried(network.spots.size));
};

const lengthOf = ({ sighting: { seen } }: Candidate): number =>
  seen.kind === 'tape' ? seen.length : 0;

const best = (tried: readonly (Candidate & { readonly gain: number })[]): Candidate | null =>
  tried.toSorted(
    (a, b) =>
      b.gain - a.gain ||
      // of tapes that do as much, a short one is the easier to pull
      Math.round(Math.log2(b.give)) - Math.round(Math.log2(a.give)) ||
      lengthOf(a) - lengthOf(b),
  )[0] ?? null;

const withIt = (network: Network, { sighting }: Candidate): Network => ({
  ...network,
  sightings: [...network.sightings, sighting],
});

/** The tape that makes the largest body larger than any other does; null where none does. */
const holdingTape = (network: Network, places: Places, trusts: Trusts): Candidate | null => {
  const sizeOf = (of: Network): number => bodiesOf(of, places)[0]?.marks.size ?? 1;
  const before = sizeOf(network);
  const tried = candidatesIn(network, places, trusts).map((one) => ({
    ...one,
    gain: sizeOf(withIt(network, one)),
  }));
  // where no single tape holds a mark, the least certain one is the first of two
  return best(
    tried.some(({ gain }) => gain > before) ? tried : tried.map((one) => ({ ...one, gain: 0 })),
  );
};

/** The tape that checks the least checked reading best; null where all are checked, or it would not. */
const checkingTape = (network: Network, places: Places, trusts: Trusts): Candidate | null => {
  const weakest = (of: Network): number => {
    const strength = strengthOf(of, places);
    const own = strength.rows.filter(({ sighting }) => sighting.id !== 'observation:next');
    return Math.min(1, ...own.map((row) => redundancyOf(row, strength)));
  };
  const before = weakest(network);
  if (before >= checkedFrom) return null;
  const tried = candidatesIn(network, places, trusts).map((one) => ({
    ...one,
    gain: weakest(withIt(network, one)),
  }));
  const found = best(tried);
  return found !== null && tried.some(({ gain }) => gain > before + 1e-6) ? found : null;
};

/**
 * The one tape that would help most: that which holds the most marks to the rest; where all are held,
 * that which checks the reading that is checked least. Null where none would help.
 */
export const helpfulTape = (
  network: Network,
  places: Places,
  { trusts, loose }: { readonly trusts: Trusts; readonly loose: number },
): { readonly from: MarkId; readonly to: MarkId } | null => {
  const firm = {
    ...network,
    sightings: network.sightings.filter(({ seen }) => seen.kind !== 'fix'),
  };
  const found = loose > 0 ? holdingTape(firm, places, trusts) : checkingTape(firm, places, trusts);
  return found === null ? null : { from: found.from, to: found.to };
};
