import type { Feature } from '../../site/feature.ts';
import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { Inches } from '../../units/inches.ts';

type Limits = Pick<Extract<Feature, { kind: 'height zone' }>, 'solid' | 'open'>;

/** The limit that a build is held to, inches over the ground: fence that slats or a screen close is not open. */
export const heightLimitOf = (
  limits: Limits,
  { solid }: Pick<FenceSpec, 'solid'>,
): { readonly which: 'solid' | 'open'; readonly limit: Inches } => {
  const which = solid === null ? 'open' : 'solid';
  return { which, limit: limits[which] };
};
