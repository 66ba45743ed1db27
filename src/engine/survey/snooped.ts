import { refitted, type Rest } from './refitted.ts';
import { mostLikely } from './mostLikely.ts';
import type { Network } from './networks.ts';
import { rowsOf, type Row } from './rows.ts';
import { stepsWorth } from './stepsWorth.ts';
import { product, shadowOf, strengthOf } from './strength.ts';
import type { Suspect } from './survey.ts';
import { alikeTo, critical, testedIn } from './tested.ts';

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

/** The readings that are most likely wrong, the gravest first. */
export interface Snooped {
  readonly suspects: readonly Suspect[];
  /** Whether the rest does not agree without them either. */
  readonly more: boolean;
}

/**
 * The readings of a network that are most likely wrong: the one without which the others agree best is
 * put aside and the rest adjusted again, until no residual is over the critical value, five are named,
 * or more would not be worth the wait. Iterative data snooping after Baarda, with the neighbours of
 * the largest residual tried as well.
 */
export const snooped = (network: Network): Snooped => {
  const suspects: Suspect[] = [];
  let left = refitted(network);
  let steps = stepsWorth(network);
  for (;;) {
    const strength = strengthOf(left.network, left.places);
    const tested = testedIn(strength);
    if ((tested[0]?.size ?? 0) <= critical) return { suspects, more: false };
    if (suspects.length > 0 && (suspects.length === mostSuspects || steps <= 0))
      return { suspects, more: true };
    const share = steps / (mostSuspects - suspects.length);
    const trial = mostLikely(left.network, tested, strength, share);
    const [best, ...others] = trial.tried;
    if (best === undefined) return { suspects, more: true };
    const { one, rest } = best;
    const alike = [
      one,
      ...others.flatMap((tried) => (tried.rest.cost < rest.cost + nearlyAsGood ? tried.one : [])),
    ]
      .flatMap((each) => [each, ...alikeTo(each, tested, strength)])
      .map(({ row }) => row.sighting.id);
    suspects.push({ ids: [...new Set(alike)], ...expected(rest, one.row) });
    [left, steps] = [rest, steps - trial.steps];
  }
};
