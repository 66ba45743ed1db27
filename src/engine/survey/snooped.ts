import type { ObservationId } from '../../site/ids.ts';
import { adjusted } from './adjusted.ts';
import type { Network } from './networks.ts';
import { through, type Row } from './normal.ts';
import { redundancyOf, strengthOf, type Strength } from './strength.ts';
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

/** A residual over its own standard deviation; null where nothing else tells of it. */
export const standardisedOf = (row: Row, strength: Strength): number | null => {
  const redundancy = redundancyOf(row, strength);
  return redundancy < leastRedundancy ? null : row.off / Math.sqrt(redundancy);
};

const correlation = (a: Row, b: Row, strength: Strength): number => {
  const both = redundancyOf(a, strength) * redundancyOf(b, strength);
  return both === 0 ? 0 : -through(a, strength.covariance, strength.size, b) / Math.sqrt(both);
};

/** The rows whose residual is the largest of all, those first that stand nearer to their reading. */
const worst = (strength: Strength): readonly Row[] => {
  const tested = strength.rows.flatMap((row) => {
    const w = row.sighting.seen.kind === 'fix' ? null : standardisedOf(row, strength);
    return w === null || Math.abs(w) <= critical ? [] : [{ row, size: Math.abs(w) }];
  });
  const [first, ...others] = tested.toSorted((a, b) => b.size - a.size);
  if (first === undefined) return [];
  const alike = others.filter(
    ({ row }) => Math.abs(correlation(first.row, row, strength)) > together,
  );
  return [first.row, ...alike.map(({ row }) => row)];
};

/** The network without an observation, and what that would read by all others, with its sigma. */
const withoutIt = (network: Network, row: Row) => {
  const { id, seen, sigma } = row.sighting;
  const rest = { ...network, sightings: network.sightings.filter((one) => one.id !== id) };
  const { places } = adjusted(rest);
  const { size, covariance } = strengthOf(rest, places);
  const [alone] = strengthOf({ ...network, sightings: [row.sighting] }, places).rows;
  const off = (alone?.off ?? 0) * sigma;
  const give = alone === undefined ? 0 : sigma * Math.sqrt(through(alone, covariance, size));
  return { rest, expects: readOf(seen) + off, give };
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

/**
 * The readings of a network that are most likely wrong: the one of the largest standardised residual
 * is put aside and the rest adjusted again, until no residual is over the critical value. Iterative
 * data snooping, as Baarda has it.
 */
export const snooped = (network: Network): Suspect[] => {
  const suspects: Suspect[] = [];
  let left = network;
  while (suspects.length < mostSuspects) {
    const strength = strengthOf(left, adjusted(left).places);
    const rows = worst(strength);
    const [first] = rows;
    if (first === undefined) break;
    const { rest, expects, give } = withoutIt(left, first);
    const ids: ObservationId[] = rows.map(({ sighting }) => sighting.id);
    suspects.push({ ids, expects, give });
    left = rest;
  }
  return suspects;
};
