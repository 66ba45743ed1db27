import type { MemberShape } from '../../trade/openFrames.ts';
import type { Inches } from '../../units/inches.ts';
import { meshSolidity } from './meshSolidity.ts';

/** How solid a fabric is, 0 to 1, and how wind takes what closes it. */
export interface Closed {
  readonly solidity: number;
  readonly shape: MemberShape;
}

/**
 * Fabric of a mesh and wire, inches, with what slats or a screen leave solid (0 to 1, null for none of them):
 * never less than its own wires. Slats and screens are flat, wires are round.
 */
export const closedBy = (
  { mesh, wire }: { readonly mesh: Inches; readonly wire: Inches },
  solid: number | null,
): Closed => {
  const wires = meshSolidity(mesh, wire);
  if (solid === null || solid <= wires) return { solidity: wires, shape: 'round' };
  return { solidity: solid, shape: 'flat' };
};
