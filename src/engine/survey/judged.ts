import { spot } from '../../geometry/tolerance.ts';
import { leastSquares } from '../../geometry/upperTriangle.ts';
import type { ObservationId } from '../../site/ids.ts';
import type { Network } from './networks.ts';
import { reachOf } from './reachOf.ts';
import type { Row } from './rows.ts';
import { snooped, type Snooped } from './snooped.ts';
import { longestOf } from './stance.ts';
import { loosened, strengthOf, type Strength } from './strength.ts';
import type { Reading, Suspect } from './survey.ts';
import { critical, redundanciesIn, standardisedOf, testedIn } from './tested.ts';

/** What one network says of its readings, where its marks stand already. */
export interface Judged {
  readonly readings: readonly (readonly [ObservationId, Reading])[];
  readonly suspects: readonly Suspect[];
  /** Whether more readings disagree than these. */
  readonly more: boolean;
  /** Observations more than are needed: degrees of freedom. */
  readonly spare: number;
  /** The sum of squares of the residuals, each over its sigma. */
  readonly squares: number;
  /** Whether the marks have come to rest: what is left of the way is less than one spot. */
  readonly settled: boolean;
}

const readingOf = (redundancies: ReadonlyMap<Row, number>, rows: readonly Row[]): Reading => {
  const redundancy = Math.min(...rows.map((row) => redundancies.get(row) ?? 0));
  const [only, other] = rows;
  if (only === undefined || other !== undefined) {
    const residual = Math.hypot(...rows.map(({ off, sighting }) => off * sighting.sigma));
    return { residual, redundancy, standardised: null };
  }
  const standardised = standardisedOf(only, redundancy);
  return { residual: only.off * only.sighting.sigma, redundancy, standardised };
};

/** The rows of each observation: one, of a fix two. */
const rowsById = ({ rows }: Strength): ReadonlyMap<ObservationId, readonly Row[]> => {
  const found = new Map<ObservationId, Row[]>();
  for (const row of rows) {
    const { id } = row.sighting;
    const own = found.get(id);
    if (own === undefined) found.set(id, [row]);
    else own.push(row);
  }
  return found;
};

/** Nothing disagrees. */
const agreed: Snooped = { suspects: [], more: false };

/** What a network says of its readings where its marks are, by how strong it is there. */
export const judge = (
  network: Network,
  stood: Strength = strengthOf(network, network.spots),
): Judged => {
  const strength = loosened(stood, reachOf(network));
  const { rows, triangle } = strength;
  const redundancies = redundanciesIn(strength);
  const [worst] = testedIn(strength, redundancies);
  const known = triangle.free.reduce((sum, free) => sum + 1 - free, 0);
  return {
    readings: [...rowsById(strength)].map(
      ([id, own]) => [id, readingOf(redundancies, own)] as const,
    ),
    ...(worst === undefined || worst.size <= critical ? agreed : snooped(network)),
    spare: rows.length - known,
    squares: rows.reduce((sum, { off }) => sum + off * off, 0),
    settled: longestOf(leastSquares(triangle)) < spot,
  };
};
