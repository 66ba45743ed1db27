import type { Ground } from '../../engine/ground/groundOf.ts';
import { heightAt } from '../../engine/ground/heightAt.ts';
import { profileAlong } from '../../engine/ground/profileAlong.ts';
import { lerp } from '../../geometry/lerp.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { GatePoint } from './alongGate.ts';

/** A place of the ground under a gate: along it and over the zero of heights, inches. */
export interface GroundSpot {
  readonly x: number;
  readonly z: number;
}

/** The ground that a gate stands over. */
export interface GroundBy {
  /** `level` where nobody has told of it. */
  readonly known: 'level' | 'from shots';
  /** Over the zero of heights, inches; that zero itself where the ground is not known. */
  readonly heightAt: (at: SitePoint) => number;
  /** What is known of it between two places, part by part; none where it is level. */
  readonly between: (from: SitePoint, to: SitePoint) => readonly (readonly GroundSpot[])[];
}

const levelGround: GroundBy = { known: 'level', heightAt: () => 0, between: () => [] };

/**
 * The ground as the pictures of a gate count it: `level` inches over the datum is their zero. Null shots make
 * it level.
 */
export const groundBy = (
  shots: Ground | null,
  level: number,
  to: (at: SitePoint) => GatePoint,
): GroundBy => {
  if (shots === null) return levelGround;
  return {
    known: 'from shots',
    heightAt: (at) => (heightAt(shots, at) ?? level) - level,
    between: (from, end) => {
      const { length, known } = profileAlong(shots, [from, end]);
      return known.map((part) =>
        part.map(({ at, z }) => ({ x: to(lerp(from, end, at / (length || 1))).x, z: z - level })),
      );
    },
  };
};
