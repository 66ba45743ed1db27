import { adjustedRest, type Rest } from './refitted.ts';
import type { Network } from './networks.ts';
import { otherSides } from './otherSides.ts';
import { resistant, resistantSteps } from './resistant.ts';
import { strengthOf, type Strength } from './strength.ts';
import { alikeTo, critical, testedIn, type Tested } from './tested.ts';

/**
 * A large error bends the rest with it, so that the largest residual may be a neighbour's: residuals of
 * at least this share of the largest are tried as well, and so many at most. Ours.
 */
const [nearlyWorst, mostTried] = [0.6, 8];

/** From so many sigmas on an error bends the rest badly. Ours. */
const gross = 30;

/** A reading that was tried, and what is left without it. */
export interface Tried {
  readonly one: Tested;
  readonly rest: Rest;
}

/** Which readings are tried, those first that are to be, and from where their rest is adjusted. */
interface Line {
  readonly network: Network;
  readonly tested: readonly Tested[];
  /** How many steps it took to find them. */
  readonly steps: number;
}

/**
 * Who stands in line. An error of many sigmas bends all the rest so much that residuals tell little:
 * then those first that are off most where the marks stand by absolute residuals.
 */
const lineOf = (network: Network, tested: readonly Tested[], steps: number): Line => {
  const worst = tested[0]?.size ?? 0;
  const large = tested.filter(({ size }) => size > Math.max(critical, nearlyWorst * worst));
  if (worst < gross || steps < 2 * resistantSteps) return { network, tested: large, steps: 0 };
  const { network: stood, offs } = resistant(network);
  const sizes = new Map(network.sightings.map(({ id }, n) => [id, offs[n] ?? 0] as const));
  const sizeOf = ({ row }: Tested): number => sizes.get(row.sighting.id) ?? 0;
  const first = tested
    .filter((one) => sizeOf(one) > critical)
    .toSorted((a, b) => sizeOf(b) - sizeOf(a))
    .slice(0, mostTried / 2);
  return { network: stood, tested: [...new Set([...first, ...large])], steps: resistantSteps };
};

/** No try is worth less than so many steps. Ours. */
const fewestSteps = 10;

/** How many steps all that was tried has taken. */
const takenBy = (tried: readonly Tried[]): number =>
  tried.reduce((sum, { rest }) => sum + rest.steps, 0);

const tryOf = (network: Network, one: Tested, steps: number): Tried => ({
  one,
  rest: adjustedRest(network, one.row.sighting.id, Math.max(fewestSteps, steps)),
});

/**
 * Tries those in line, one or more; who goes with one that was tried is not, since the rest would be
 * the same.
 */
const triedIn = ({ network, tested }: Line, strength: Strength, steps: number): Tried[] => {
  const tried: Tried[] = [];
  let left = tested;
  while (tried.length < mostTried) {
    const [one] = left;
    const allowed = steps - takenBy(tried);
    if (one === undefined || (tried.length > 0 && allowed <= 0)) break;
    const alike = alikeTo(one, left, strength);
    left = left.filter((other) => other !== one && !alike.includes(other));
    tried.push(tryOf(network, one, allowed));
  }
  return tried;
};

const agrees = ({ network, places }: Rest): boolean =>
  (testedIn(strengthOf(network, places))[0]?.size ?? 0) <= critical;

/**
 * Where the rest agrees without none of them: those with marks of theirs on the other side, and as many
 * others as they are.
 */
const triedAgain = (
  { network }: Line,
  tested: readonly Tested[],
  tried: readonly Tried[],
  steps: number,
): Tried[] => {
  const again = new Set(tried.map(({ one }) => one));
  const others = tested.filter((one) => one.size > critical && !again.has(one)).slice(0, mostTried);
  const starts = [...again, ...others].flatMap((one) =>
    [...(again.has(one) ? [] : [network]), ...otherSides(network, one.row.sighting)].map(
      (start) => ({ one, start }),
    ),
  );
  const found: Tried[] = [];
  for (const { one, start } of starts) {
    const allowed = steps - takenBy(found);
    if (allowed <= 0) break;
    found.push(tryOf(start, one, allowed));
  }
  return found;
};

/** The best of what was tried for each reading, the best reading first. */
const ranked = (tried: readonly Tried[]): Tried[] => {
  const best = new Map<Tested, Tried>();
  for (const one of tried) {
    const known = best.get(one.one);
    if (known === undefined || one.rest.cost < known.rest.cost) best.set(one.one, one);
  }
  return [...best.values()].toSorted((a, b) => a.rest.cost - b.rest.cost);
};

/** What was tried, the best first, and how many steps of the sums that took. */
export interface Trial {
  readonly tried: readonly Tried[];
  readonly steps: number;
}

/**
 * Of the readings with the largest residuals those that were tried, the one first without which all the
 * others agree best; none where no residual is over the critical value. Nothing more is tried once the
 * `steps` that are worth the wait are taken.
 */
export const mostLikely = (
  network: Network,
  tested: readonly Tested[],
  strength: Strength,
  steps: number,
): Trial => {
  const worst = tested[0]?.size ?? 0;
  if (worst <= critical) return { tried: [], steps: 0 };
  const line = lineOf(network, tested, steps);
  const first = triedIn(line, strength, steps - line.steps);
  const taken = line.steps + takenBy(first);
  const [best] = ranked(first);
  if (worst < gross || best === undefined || agrees(best.rest))
    return { tried: ranked(first), steps: taken };
  const again = triedAgain(line, tested, first, steps - taken);
  return { tried: ranked([...first, ...again]), steps: taken + takenBy(again) };
};
