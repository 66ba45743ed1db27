import type { PaperPoint } from '../../geometry/point.ts';
import type { Outline } from '../outline.ts';
import { onPiece } from './onPiece.ts';
import { pathPieces } from './pathPieces.ts';

/** A round is kept clear as straight pieces over no more than this, radians. */
const pieceOfTurn = Math.PI / 24;

/** The straight pieces of an outline; arcs as pieces of 7.5 degrees at most. */
export const outlinePieces = (outline: Outline): (readonly [PaperPoint, PaperPoint])[] =>
  pathPieces(outline).flatMap((piece) => {
    if (piece.kind === 'straight') return [[piece.from, piece.to] as const];
    const count = Math.max(1, Math.ceil(Math.abs(piece.step.sweep) / pieceOfTurn));
    return Array.from(
      { length: count },
      (_, n) => [onPiece(piece, n / count), onPiece(piece, (n + 1) / count)] as const,
    );
  });
