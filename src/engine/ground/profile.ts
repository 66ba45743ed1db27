import type { Piece } from '../../geometry/throughCapsule.ts';
import type { Inches } from '../../units/inches.ts';

/** A place of a profile: how far along it, in plan, and how high the ground is there; inches. */
export interface ProfileStation {
  readonly at: Inches;
  readonly z: Inches;
}

/** The ground under a way, unrolled. Straight between two stations of one known part. */
export interface Profile {
  /** In plan, inches. */
  readonly length: Inches;
  /** Parts over known ground, rising; each of two stations or more. */
  readonly known: readonly (readonly ProfileStation[])[];
  /** Parts outside of the shots, rising. */
  readonly unknown: readonly Piece[];
}

/** A straight part of a profile between two neighbouring stations. */
export interface ProfilePart {
  readonly from: ProfileStation;
  readonly to: ProfileStation;
  /** Rise over run in plan: 0.15 is 15 %, below 0 downhill. */
  readonly grade: number;
}

/** The straight parts of what is known of a profile, rising. */
export const partsOf = ({ known }: Pick<Profile, 'known'>): ProfilePart[] =>
  known.flatMap((stations) =>
    stations.slice(1).flatMap((to, n) => {
      const from = stations[n];
      return from === undefined ? [] : [{ from, to, grade: (to.z - from.z) / (to.at - from.at) }];
    }),
  );
