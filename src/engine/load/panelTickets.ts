import { spot } from '../../geometry/tolerance.ts';
import { inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { baysOf, type HungBay } from './baysOf.ts';
import { grouped } from './grouped.ts';
import type { HungPiece } from './hungPieces.ts';
import type { LoadTicket } from './load.ts';
import { sizeCodes, sizeWords, type Sizes } from './sizes.ts';
import { phrase } from '../../phrases/phrase.ts';

interface Cut {
  readonly sizes: Required<Pick<Sizes, 'board' | 'height'>>;
  readonly bay: HungBay;
}

const cutsOf = (hung: HungPiece): Cut[] => {
  const { infill, fabricHeight: height } = hung.spec;
  if (infill.kind !== 'panels') return [];
  const board = { label: infill.panel, width: infill.width };
  return baysOf(hung)
    .filter(({ clear }) => Math.abs(clear - infill.width) > spot)
    .map((bay) => ({ sizes: { board, height }, bay }));
};

const by = ['board', 'height'] as const;

/**
 * The panels that are not hung whole, by what they are: each is cut from one of its own, to what is clear
 * between the faces of its posts. Those for a bay that is wider than a panel are told as too long.
 */
export const panelTickets = (all: readonly HungPiece[], style: LengthStyle): LoadTicket[] =>
  grouped(all.flatMap(cutsOf), ({ sizes }) => sizeCodes(by, sizes).join()).flatMap(
    (same): LoadTicket[] => {
      const [first] = same;
      if (first === undefined) return [];
      const { width } = first.sizes.board;
      const pieces = same.map(({ bay: { from, to, clear } }) => ({
        length: clear,
        for: `${from.tag}–${to.tag}`,
      }));
      const sticks = pieces
        .filter(({ length }) => length <= width)
        .map((piece) => ({
          from: 'bought' as const,
          stick: width,
          pieces: [piece],
          left: inches(width - piece.length),
        }));
      return [
        {
          code: ['panel-cut', ...sizeCodes(by, first.sizes)].join(' '),
          item: [phrase`Panel`, ...sizeWords(by, first.sizes, style)].join(', '),
          kind: 'panel',
          ticket: {
            sticks,
            bought: sticks.length,
            least: sticks.length,
            tooLong: pieces.filter(({ length }) => length > width),
            joints: 0,
          },
        },
      ];
    },
  );
