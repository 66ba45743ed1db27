import { lerp } from '../../geometry/lerp.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import type { ArcStep } from '../outline.ts';
import type { PathPiece } from './pathPieces.ts';

/** The point at a share of an arc, 0 to 1, on the paper. */
export const onArc = ({ x, y, radius, start, sweep }: ArcStep, share: number): PaperPoint => ({
  x: x + radius * Math.cos(start + share * sweep),
  y: y - radius * Math.sin(start + share * sweep),
});

/** The point at a share of the length of a piece, 0 to 1, on the paper. */
export const onPiece = (piece: PathPiece, share: number): PaperPoint =>
  piece.kind === 'arc' ? onArc(piece.step, share) : lerp(piece.from, piece.to, share);
