import { pens, type PenName } from '../../drawing/pens.ts';
import type { Infill } from '../../site/infill.ts';

/** Letters in the middle of a gap of a line: which gap, the height of a capital in paper inches. */
export interface LineSign {
  readonly text: string;
  /** The number of the gap among the dashes, from 0. */
  readonly gap: number;
  readonly height: number;
  /** How wide and high the letters themselves are, in heights of a capital. */
  readonly wide: number;
  readonly high: number;
}

/** A line type: what it is, its dashes in paper inches with gaps below zero, and the sign in one of them. */
export interface DxfDashes {
  readonly is: string;
  readonly dashes: readonly number[];
  readonly sign?: LineSign;
}

/** Dashes of a pen as a DXF has them, paper inches: what is left free is below zero, a dot is zero. */
const dashed = (pen: PenName): readonly number[] =>
  pens[pen].dash.map((length, n) => (n % 2 === 0 ? length : -length));

/** Fence as the sheets draw it: from sign to sign and the gap about a sign, paper inches. */
const fenced = [0.3, -0.12] as const;

/**
 * The line types of a DXF by name. They are those of the pens of the sheets. Fence has dashes with a sign
 * between that says what it is: an x for wire (drafting practice, from memory), for boards and for panels
 * letters that look like the signs of the sheets, ours. How wide letters are in a plain CAD font is about,
 * from memory.
 */
export const dxfLineTypes = {
  FENCE: {
    is: 'Fence ____ x ____ x ____',
    dashes: fenced,
    sign: { text: 'x', gap: 1, height: 0.08, wide: 0.6, high: 0.67 },
  },
  'FENCE-BOARDS': {
    is: 'Fence of boards ____ || ____ || ____',
    dashes: fenced,
    sign: { text: '||', gap: 1, height: 0.06, wide: 0.8, high: 1 },
  },
  'FENCE-PANELS': {
    is: 'Fence of panels ____ [] ____ [] ____',
    dashes: fenced,
    sign: { text: '[]', gap: 1, height: 0.06, wide: 1.2, high: 1 },
  },
  ALONG: { is: 'What posts are set out along . . . .', dashes: [0, -0.06] },
  BOUNDARY: { is: 'Boundary ____ _ _ ____', dashes: dashed('boundary') },
  UTILITY: { is: 'Utility __ __ __', dashes: dashed('gas') },
  HIDDEN: { is: 'Where a leaf goes _ _ _', dashes: dashed('swing') },
  CLOSED: { is: 'Ground closed to holes _ _ _', dashes: dashed('keep-out') },
  ZONE: { is: 'Ground with a height limit __ . __', dashes: dashed('height zone') },
} as const satisfies Record<string, DxfDashes>;

export type DxfLineType = keyof typeof dxfLineTypes;

/** The line type of what hangs between the posts. */
export const infillLines: Readonly<Record<Infill['kind'], DxfLineType>> = {
  'chain link': 'FENCE',
  boards: 'FENCE-BOARDS',
  panels: 'FENCE-PANELS',
};
