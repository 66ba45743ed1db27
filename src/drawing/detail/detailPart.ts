import type { Atom } from '../atom.ts';
import type { DetailLabel } from './detailLabel.ts';

/** A part of a picture: what is drawn, in the order it is painted, and its texts before they have a place. */
export interface DetailPart {
  readonly atoms: readonly Atom[];
  readonly labels: readonly DetailLabel[];
}

/** Parts as one, painted one after the other. */
export const joined = (parts: readonly DetailPart[]): DetailPart => ({
  atoms: parts.flatMap(({ atoms }) => atoms),
  labels: parts.flatMap(({ labels }) => labels),
});
