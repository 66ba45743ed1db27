import type { Conditions } from '../../site/conditions.ts';
import type { FenceSpec } from '../../site/fenceSpec.ts';
import { holeDepth } from '../../trade/footings.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { footing, type Footing } from './footing.ts';
import { lateralOf } from './lateralOf.ts';
import { windOnPosts, type WindOnPosts } from './windOnPosts.ts';

/** What the line posts of one build are compared with. */
export interface BuildStructure {
  readonly wind: WindOnPosts | 'too solid' | null;
  /** The hole of a line post by every rule; by the pole formula too where a wind is told. */
  readonly footing: Footing;
  /** How deep the line posts' holes are in the plan, inches. */
  readonly depth: Inches;
  /** Lateral bearing that was counted on, pounds per square foot for each foot of depth. */
  readonly lateral: number;
}

/**
 * What wind, frost and ground ask of the line posts of a build whose longest bay is so many inches, beside
 * what is planned. Ground of which nobody has told counts as the weakest of the table.
 */
export const buildStructure = (
  spec: FenceSpec,
  conditions: Conditions,
  bay: Inches,
): BuildStructure => {
  const wind = windOnPosts(spec, conditions, bay);
  const lateral = lateralOf(conditions);
  const pole =
    wind === null || wind === 'too solid'
      ? null
      : ({ push: wind.push, lateral, held: 'by nothing' } as const);
  return {
    wind,
    footing: footing({
      od: spec.linePost.od,
      fabricHeight: spec.fabricHeight,
      leaf: null,
      into: 'soil',
      frost: conditions.frost,
      pole,
    }),
    depth: inches(Math.max(holeDepth(spec.fabricHeight), spec.leastDepth)),
    lateral,
  };
};
