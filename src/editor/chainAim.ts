import { bearing } from '../geometry/bearing.ts';
import type { Aim } from './aim.ts';
import { closingLines } from './closingLines.ts';
import type { Pointer } from './pointer.ts';
import type { Stand } from './stand.ts';
import type { Piece } from './tool.ts';
import type { Typed } from './typed.ts';

/** The piece that runs on from the last point of a chain; null before its first point. */
export const chainPiece = (chain: readonly Stand[]): Piece | null => {
  const [here, before] = [chain.at(-1), chain.at(-2)];
  if (here === undefined) return null;
  return { from: here.point, last: before ? bearing(before.point, here.point) : null };
};

/**
 * The aim for the next point of a chain: its last point is where the piece starts, its last piece
 * what is squared to. With no point yet, the aim for the first one.
 */
export const chainAim = (
  chain: readonly Stand[],
  pointer: NonNullable<Pointer>,
  typed: Typed,
): Aim => {
  const [here, before] = [chain.at(-1), chain.at(-2)];
  return {
    ...pointer,
    from: here?.point ?? null,
    last: here && before ? bearing(before.point, here.point) : null,
    typed,
    except: here?.on?.kind === 'mark' ? [here.on.id] : [],
    also: closingLines(chain.map(({ point }) => point)),
  };
};
