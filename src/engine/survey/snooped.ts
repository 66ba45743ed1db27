import { refitted, type Rest } from './refitted.ts';
import { mostLikely } from './mostLikely.ts';
import type { Network } from './networks.ts';
import { rowsOf, type Row } from './rows.ts';
import { product, shadowOf, strengthOf } from './strength.ts';
import type { Suspect } from './survey.ts';
import { alikeTo, testedIn } from './tested.ts';

const mostSuspects = 5;

/**
 * Two readings of which the rest agrees so nearly as well without the one as without the other cannot be
 * told apart: of sums of squares that differ by less, one is not twice as likely as the other. Ours.
 */
const nearlyAsGood = 1;

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

/**
 * The readings of a network that are most likely wrong: the one without which the others agree best is
 * put aside and the rest adjusted again, until no residual is over the critical value. Iterative data
 * snooping after Baarda, with the neighbours of the largest residual tried as well.
 */
export const snooped = (network: Network): Suspect[] => {
  const suspects: Suspect[] = [];
  let left = refitted(network);
  while (suspects.length < mostSuspects) {
    const strength = strengthOf(left.network, left.places);
    const tested = testedIn(strength);
    const [best, ...others] = mostLikely(left.network, tested, strength);
    if (best === undefined) break;
    const { one, rest } = best;
    const alike = [
      one,
      ...others.flatMap((tried) => (tried.rest.cost < rest.cost + nearlyAsGood ? tried.one : [])),
    ]
      .flatMap((each) => [each, ...alikeTo(each, tested, strength)])
      .map(({ row }) => row.sighting.id);
    suspects.push({ ids: [...new Set(alike)], ...expected(rest, one.row) });
    left = rest;
  }
  return suspects;
};
