import type { Conditions } from '../../site/conditions.ts';
import type { FenceSpec } from '../../site/fenceSpec.ts';
import { allowableWind, exposures } from '../../trade/windTerms.ts';
import { gradeOf } from '../../trade/gradeOf.ts';
import { pipeGrades, type PipeGrade } from '../../trade/steel.ts';
import { usualFabric } from '../../trade/wires.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { allowedBay } from './allowedBay.ts';
import { bendingCapacity, type Member } from './bendingCapacity.ts';
import { fenceWind, type FenceWind, type WindFence } from './fenceWind.ts';
import { meshSolidity } from './meshSolidity.ts';
import type { PolePush } from './poleFooting.ts';
import { solidAtMost } from './solidAtMost.ts';
import type { Wind } from './velocityPressure.ts';

/** The wind on the line posts of a build, and what these bear. Lengths in inches, moments in inch-pounds. */
export interface WindOnPosts {
  /** The longest bay that a post of the build holds. */
  readonly bay: Inches;
  readonly solidity: number;
  /** At strength level. */
  readonly wind: FenceWind;
  /** At the ground, as it counts where allowable stresses are used. */
  readonly bends: number;
  readonly capacity: number;
  readonly steel: PipeGrade['label'];
  /** The longest bay at which the post bends by no more than it may bear. */
  readonly longest: Inches;
  /** What pushes on the post, as it counts for its footing. */
  readonly push: PolePush;
}

const fenceOf = (spec: FenceSpec): WindFence => {
  const wire = spec.wire ?? usualFabric.wire;
  return {
    solidity: spec.solid ?? meshSolidity(spec.mesh ?? usualFabric.mesh, wire),
    wire,
    fabricHeight: spec.fabricHeight,
    gapUnder: spec.gapUnder,
    post: spec.linePost.od,
    rail: spec.topRail?.od ?? null,
  };
};

/** The steel of the line posts: as the build says, else as the table has their pipe. */
const steelOf = ({ linePost, grade }: FenceSpec): PipeGrade =>
  pipeGrades.find(({ label }) => label === grade) ?? gradeOf(linePost);

const memberOf = (spec: FenceSpec): Member => {
  const { od, wall } = solidAtMost(spec.linePost);
  return { od, wall, yields: steelOf(spec).yields };
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
  const [fence, member] = [fenceOf(spec), memberOf(spec)];
  const found = fenceWind(fence, windOf(conditions.wind), bay);
  const longest = bayInWind(spec, conditions);
  if (found === null || longest === null) return 'too solid';
  const height = inches(found.pounds === 0 ? 0 : found.moment / found.pounds);
  return {
    bay,
    solidity: fence.solidity,
    wind: found,
    bends: allowableWind * found.moment,
    capacity: bendingCapacity(member),
    steel: steelOf(spec).label,
    longest,
    push: { pounds: allowableWind * found.pounds, height },
  };
};
