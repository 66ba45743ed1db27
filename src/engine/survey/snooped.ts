import type { ObservationId } from '../../site/ids.ts';
import { adjusted } from './adjusted.ts';
import type { Network } from './networks.ts';
import { resistant } from './resistant.ts';
import { rowsOf, type Places, type Row } from './rows.ts';
import { stanceAt, taskOf } from './stance.ts';
import { product, redundancyOf, shadowOf, strengthOf, type Strength } from './strength.ts';
import type { Suspect } from './survey.ts';

/**
 * A standardised residual over this is no chance: one good reading of a thousand is over it. W. Baarda,
 * A Testing Procedure for Use in Geodetic Networks (Delft, 1968); from memory.
 */
export const critical = 3.29;

/** Where the others show less of an error, nothing can be said of a reading. Ours, no published source. */
export const leastRedundancy = 1e-4;

/** Two residuals that go together so closely cannot be told apart. Ours, no published source. */
const together = 0.999;

const mostSuspects = 5;

/**
 * A large error bends the rest with it, so that the largest residual may be a neighbour's: residuals of
 * at least this share of the largest are tried as well, and so many at most. Ours.
 */
const [nearlyWorst, mostTried] = [0.6, 8];

/** From so many sigmas on an error bends the rest badly. Ours. */
const gross = 30;

/** A row that was tested against the others. */
interface Tested {
  readonly row: Row;
  readonly redundancy: number;
  /** Its standardised residual, without its sign. */
  readonly size: number;
}

/** A residual over its own standard deviation; null where nothing else tells of it. */
export const standardisedOf = ({ off }: Row, redundancy: number): number | null =>
  redundancy < leastRedundancy ? null : off / Math.sqrt(redundancy);

/** The rows that can be tested, the largest residual first; fixes are rough, and are not tested. */
const testedIn = (strength: Strength): Tested[] =>
  strength.rows
    .flatMap((row): Tested[] => {
      if (row.sighting.seen.kind === 'fix') return [];
      const redundancy = redundancyOf(row, strength);
      const w = standardisedOf(row, redundancy);
      return w === null ? [] : [{ row, redundancy, size: Math.abs(w) }];
    })
    .toSorted((a, b) => b.size - a.size);

/** The correlation of the residuals of two rows. */
const correlation = (a: Tested, b: Tested, strength: Strength): number =>
  -product(shadowOf(a.row, strength), shadowOf(b.row, strength)) /
  Math.sqrt(a.redundancy * b.redundancy);

const alikeTo = (first: Tested, tested: readonly Tested[], strength: Strength): Tested[] =>
  tested.filter((one) => one !== first && Math.abs(correlation(first, one, strength)) > together);

/** What is left of a network without one observation, adjusted. */
interface Rest {
  readonly network: Network;
  readonly places: Places;
  readonly cost: number;
}

const adjustedRest = (network: Network, without: ObservationId | null): Rest => {
  const sightings = network.sightings.filter(({ id }) => id !== without);
  const { places } = adjusted({ ...network, sightings });
  const spots = new Map(
    [...network.spots].map(([id, spot]) => [id, { ...spot, ...places.get(id) }] as const),
  );
  const rest = { spots, sightings };
  const task = taskOf(rest);
  const { cost } = stanceAt(task, new Float64Array(task.frame.later.length));
  return { network: rest, places, cost };
};

/** What a reading would be by all the others, and one standard deviation of that. */
const expected = ({ network, places }: Rest, { sighting }: Row) => {
  const strength = strengthOf(network, places);
  const { sigma, seen } = sighting;
  const [alone] = rowsOf([sighting], strength.frame, places);
  if (alone === undefined) return { expects: readOf(seen), give: 0 };
  const shadow = shadowOf(alone, strength);
  return {
    expects: readOf(seen) + alone.off * sigma,
    give: sigma * Math.sqrt(product(shadow, shadow)),
  };
};

/** What an observation reads: its figure, a quarter turn for a square corner, nothing off for the rest. */
const readOf = (seen: Row['sighting']['seen']): number => {
  switch (seen.kind) {
    case 'tape':
      return seen.length;
    case 'offset':
      return seen.distance;
    case 'bearing':
      return seen.bearing;
    case 'square':
      return Math.PI / 2;
    default:
      return 0;
  }
};

/** Which readings are tried, those first that are to be, and from where their rest is adjusted. */
interface Line {
  readonly network: Network;
  readonly tested: readonly Tested[];
}

/**
 * Who stands in line. An error of many sigmas bends all the rest so much that residuals tell little:
 * then those first that are off most where the marks stand by absolute residuals.
 */
const lineOf = (network: Network, tested: readonly Tested[]): Line => {
  const worst = tested[0]?.size ?? 0;
  const large = tested.filter(({ size }) => size > Math.max(critical, nearlyWorst * worst));
  if (worst < gross) return { network, tested: large };
  const { network: stood, offs } = resistant(network);
  const sizes = new Map(network.sightings.map(({ id }, n) => [id, offs[n] ?? 0] as const));
  const sizeOf = ({ row }: Tested): number => sizes.get(row.sighting.id) ?? 0;
  const first = tested
    .filter((one) => sizeOf(one) > critical)
    .toSorted((a, b) => sizeOf(b) - sizeOf(a))
    .slice(0, mostTried / 2);
  return { network: stood, tested: [...new Set([...first, ...large])] };
};

/**
 * Of the readings with the largest residuals the one without which all the others agree best. Those
 * that go with one that was tried are not tried again: without them the rest is the same.
 */
const mostLikely = (network: Network, tested: readonly Tested[], strength: Strength) => {
  if ((tested[0]?.size ?? 0) <= critical) return null;
  const line = lineOf(network, tested);
  let left = line.tested;
  let best: { readonly one: Tested; readonly rest: Rest } | null = null;
  for (let n = 0; n < mostTried; n += 1) {
    const [one] = left;
    if (one === undefined) break;
    const alike = alikeTo(one, left, strength);
    left = left.filter((other) => other !== one && !alike.includes(other));
    const rest = adjustedRest(line.network, one.row.sighting.id);
    if (best === null || rest.cost < best.rest.cost) best = { one, rest };
  }
  return best;
};

/**
 * The readings of a network that are most likely wrong: the one without which the others agree best is
 * put aside and the rest adjusted again, until no residual is over the critical value. Iterative data
 * snooping after Baarda, with the neighbours of the largest residual tried as well.
 */
export const snooped = (network: Network): Suspect[] => {
  const suspects: Suspect[] = [];
  let left = adjustedRest(network, null);
  while (suspects.length < mostSuspects) {
    const strength = strengthOf(left.network, left.places);
    const tested = testedIn(strength);
    const found = mostLikely(left.network, tested, strength);
    if (found === null) break;
    const { one, rest } = found;
    const alike = alikeTo(one, tested, strength).map(({ row }) => row.sighting.id);
    suspects.push({ ids: [one.row.sighting.id, ...alike], ...expected(rest, one.row) });
    left = rest;
  }
  return suspects;
};
