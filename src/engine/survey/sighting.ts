import type { MarkId, ObservationId } from '../../site/ids.ts';
import type { Observation } from '../../site/observation.ts';
import type { Trusts } from '../../site/trusts.ts';

/** An observation with how far it is trusted: one standard deviation, inches or radians. */
export interface Sighting {
  readonly id: ObservationId;
  readonly seen: Observation;
  readonly sigma: number;
}

/** Where a mark is drawn, site inches, and whether nothing moves it. */
export interface Spot {
  readonly x: number;
  readonly y: number;
  readonly fixed: boolean;
}

export type Spots = ReadonlyMap<MarkId, Spot>;

/** What a tape of a length is trusted to that nobody has said more of, inches. */
export const tapeSigma = (length: number, { tapeLeast, tapeShare }: Trusts): number =>
  tapeLeast + tapeShare * length;

/** What an observation is trusted to: what was said of it, else what the site trusts its kind by. */
export const sigmaOf = (seen: Observation, trusts: Trusts): number => {
  if (seen.kind === 'fix') return seen.accuracy;
  if (seen.trust !== null && seen.trust > 0) return seen.trust;
  switch (seen.kind) {
    case 'tape':
      return tapeSigma(seen.length, trusts);
    case 'square':
      return trusts.square;
    case 'straight':
    case 'parallel':
      return trusts.straight;
    case 'offset':
      return trusts.offset;
    case 'bearing':
      return trusts.bearing;
  }
};
