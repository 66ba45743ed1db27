import type { Infill } from '../../site/infill.ts';
import { baysOf } from './baysOf.ts';
import type { Counted } from './counted.ts';
import type { HungPiece } from './hungPieces.ts';
import { thing } from './thing.ts';

/** The panels of a piece, one a bay, whole or cut. */
export const panelThings = (
  hung: HungPiece,
  { panel: label, width }: Extract<Infill, { kind: 'panels' }>,
): Counted[] => {
  const { fabricHeight: height } = hung.spec;
  return baysOf(hung).map(({ from, to, clear }) =>
    thing('panel', hung, {
      length: clear,
      sizes: { board: { label, width }, height },
      on: { posts: [from.id, to.id], lines: [], gates: [] },
    }),
  );
};
