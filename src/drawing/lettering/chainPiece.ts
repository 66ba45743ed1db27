import type { PaperPoint } from '../../geometry/point.ts';
import type { LabelStyle } from './label.ts';

/** A text and the piece between two points of the chain that it measures. */
export interface ChainPiece {
  readonly from: PaperPoint;
  readonly to: PaperPoint;
  readonly text: string;
}

/** How the text of a piece is lettered; its height in paper inches. */
export const pieceStyle = ({ text }: Pick<ChainPiece, 'text'>): LabelStyle => ({
  text,
  size: 0.14,
  weight: 'regular',
  ink: 'text',
});
