import type { Conditions } from '../../site/conditions.ts';
import type { FenceSpec } from '../../site/fenceSpec.ts';
import { exposures } from '../../trade/windTerms.ts';
import type { PipeGrade } from '../../trade/steel.ts';
import type { Inches } from '../../units/inches.ts';
import { allowedBay } from './allowedBay.ts';
import type { Member } from './bendingCapacity.ts';
import { fabricOf } from './fabricOf.ts';
import type { WindFence } from './fenceWind.ts';
import { meshSolidity } from './meshSolidity.ts';
import { postInWind, type PostInWind } from './postInWind.ts';
import { solidAtMost } from './solidAtMost.ts';
import { steelOf } from './steelOf.ts';
import type { Wind } from './velocityPressure.ts';

/** The wind on the line posts of a build, and what these bear. Lengths in inches. */
export interface WindOnPosts extends PostInWind {
  /** The longest bay that a post of the build holds. */
  readonly bay: Inches;
  readonly solidity: number;
  readonly steel: PipeGrade['label'];
}

const fenceOf = (spec: FenceSpec): Omit<WindFence, 'post'> => {
  const { mesh, wire } = fabricOf(spec);
  return {
    solidity: spec.solid ?? meshSolidity(mesh, wire),
    wire,
    fabricHeight: spec.fabricHeight,
    gapUnder: spec.gapUnder,
    rail: spec.topRail?.od ?? null,
  };
};

const memberOf = (spec: FenceSpec): Member => {
  const { od, wall } = solidAtMost(spec.linePost);
  return { od, wall, yields: steelOf(spec, spec.linePost).yields };
};

const windOf = ({ speed, exposure }: NonNullable<Conditions['wind']>): Wind => ({
  speed,
  exposure: exposures.find(({ name }) => name === exposure)?.coefficient ?? NaN,
});

/**
 * The longest bay of a build in a wind, inches; null where nobody has told of any, and where the fabric is
 * more solid than the table of open frames goes.
 */
export const bayInWind = (spec: FenceSpec, { wind }: Pick<Conditions, 'wind'>): Inches | null =>
  wind === null ? null : allowedBay(fenceOf(spec), memberOf(spec), windOf(wind));

/**
 * The wind on the line posts of a build whose longest bay is so many inches; null where nobody has told of
 * any. `too solid` where slats or a screen leave more solid than the table of open frames goes.
 */
export const windOnPosts = (
  spec: FenceSpec,
  conditions: Pick<Conditions, 'wind'>,
  bay: Inches,
): WindOnPosts | 'too solid' | null => {
  if (conditions.wind === null) return null;
  const fence = fenceOf(spec);
  const found = postInWind(fence, memberOf(spec), { wind: windOf(conditions.wind), bay });
  if (found === null) return 'too solid';
  return { ...found, bay, solidity: fence.solidity, steel: steelOf(spec, spec.linePost).label };
};
