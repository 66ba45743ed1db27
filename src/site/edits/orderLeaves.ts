import type { Inches } from '../../units/inches.ts';
import type { GateId, LeafId } from '../ids.ts';
import { oneWidth } from '../oneWidth.ts';
import type { Site } from '../site.ts';
import { setGateLeaf } from './setGateLeaf.ts';

/**
 * Gives leaves of a gate the widths (inches) that they are to be made to: one width over the whole
 * height, out of the catalogue until somebody measures them. All of them or none. RangeError for an
 * unknown gate or leaf, and for a width of zero or less.
 */
export const orderLeaves = (
  site: Site,
  gate: GateId,
  leaves: readonly { readonly id: LeafId; readonly width: Inches }[],
): Site =>
  leaves.reduce(
    (so, { id, width }) =>
      setGateLeaf(so, gate, id, { widths: oneWidth(width), from: 'catalogue', on: '' }),
    site,
  );
