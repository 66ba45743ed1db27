import type { FenceSpec } from '../../site/fenceSpec.ts';
import { fabricOf } from '../structure/fabricOf.ts';
import type { Sizes } from './sizes.ts';

/** By what fabric is ordered: its height, mesh, wire and edges; inches, the usual ones where nobody has said. */
export const fabricSizes = (spec: FenceSpec): NonNullable<Sizes['fabric']> => ({
  height: spec.fabricHeight,
  ...fabricOf(spec),
  selvage: spec.selvage,
});
