import { pens, type PenName } from '../../drawing/pens.ts';

/** Dashes of a pen as a DXF has them, paper inches: what is left free is below zero, a dot is zero. */
const dashed = (pen: PenName): readonly number[] =>
  pens[pen].dash.map((length, n) => (n % 2 === 0 ? length : -length));

/**
 * The line types of a DXF by name: what each is, and its dashes in paper inches. They are those of the
 * pens of the sheets; where fence has a sign between its dashes, its line type has a dot, since signs are
 * shapes that a reader would need a file for.
 */
export const dxfLineTypes = {
  FENCE: { is: 'Fence __ . __ .', dashes: [0.3, -0.06, 0, -0.06] },
  BOUNDARY: { is: 'Boundary ____ _ _ ____', dashes: dashed('boundary') },
  UTILITY: { is: 'Utility __ __ __', dashes: dashed('gas') },
  HIDDEN: { is: 'Where a leaf goes _ _ _', dashes: dashed('swing') },
  CLOSED: { is: 'Ground closed to holes _ _ _', dashes: dashed('keep-out') },
  ZONE: { is: 'Ground with a height limit __ . __', dashes: dashed('height zone') },
} as const satisfies Record<string, { readonly is: string; readonly dashes: readonly number[] }>;

export type DxfLineType = keyof typeof dxfLineTypes;
