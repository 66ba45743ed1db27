import type { FenceSpec } from '../../site/fenceSpec.ts';
import { usualFabric } from '../../trade/wires.ts';
import type { Inches } from '../../units/inches.ts';

/** Mesh and wire of the fabric of a build, inches: the usual ones where nobody has said. */
export const fabricOf = ({
  mesh,
  wire,
}: Pick<FenceSpec, 'mesh' | 'wire'>): { readonly mesh: Inches; readonly wire: Inches } => ({
  mesh: mesh ?? usualFabric.mesh,
  wire: wire ?? usualFabric.wire,
});
