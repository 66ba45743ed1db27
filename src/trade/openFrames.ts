import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** How wind takes a member: flat sides, or round. */
export type MemberShape = 'flat' | 'round';

/** Force coefficients of open signs and lattices from a share of solid area on. */
export interface OpenFrameRow {
  /** Solid area over gross area, from this on. */
  readonly from: number;
  readonly flat: number;
  /** Round members whose diameter in feet times the root of the pressure in psf is 2.5 at most. */
  readonly slender: number;
  /** Round members above that. */
  readonly stout: number;
}

export const openFrameSource: Source = {
  text: phrase`ASCE 7-16 Table 29.4-2, open signs and lattice frameworks`,
  status: 'published',
};

const row = (from: number, flat: number, slender: number, stout: number): OpenFrameRow => ({
  from,
  flat,
  slender,
  stout,
});

/** The whole table. It ends at 0.7: what is more solid is no open frame. */
const openFrameRows: readonly OpenFrameRow[] = [
  row(0, 2, 1.2, 0.8),
  row(0.1, 1.8, 1.3, 0.9),
  row(0.3, 1.6, 1.5, 1.1),
];

/** The most solid that a frame of the table is. */
export const mostOpenFrame = 0.7;

/** The least force on solid area, pounds per square foot. */
export const leastOpenFrameForce = 16;

const slenderTo = 2.5;

/**
 * Force coefficient of an open frame, for its share of solid area, 0 to 1, and for round members the
 * diameter in feet times the root of the velocity pressure in psf. Null for one more solid than 0.7.
 */
export const openFrameCoefficient = (
  solidity: number,
  shape: MemberShape,
  thickness: number,
): number | null => {
  if (solidity > mostOpenFrame) return null;
  const found = openFrameRows.findLast(({ from }) => solidity >= from);
  if (found === undefined) return null;
  if (shape === 'flat') return found.flat;
  return thickness <= slenderTo ? found.slender : found.stout;
};
