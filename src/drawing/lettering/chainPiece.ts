import type { PaperPoint } from '../../geometry/point.ts';
import type { LabelStyle } from './label.ts';

/**
 * A text and the piece between two points of the chain that it measures. `within` are the points
 * between, of bays written as one: the text stands clear of their ticks.
 */
export interface ChainPiece {
  readonly from: PaperPoint;
  readonly to: PaperPoint;
  readonly text: string;
  readonly within?: readonly PaperPoint[];
  /** What is written where the text is too long for its piece. */
  readonly shorter?: string;
}

/** How the text of a piece is lettered; its height in paper inches. */
export const pieceStyle = ({ text }: Pick<ChainPiece, 'text'>): LabelStyle => ({
  text,
  size: 0.141,
  weight: 'regular',
  ink: 'text',
});
