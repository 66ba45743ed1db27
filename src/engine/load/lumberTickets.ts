import type { Counting } from '../../site/counting.ts';
import { inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import type { TicketPiece } from '../cut/cutTicket.ts';
import { ticketOf } from '../cut/ticketOf.ts';
import { baysOf } from './baysOf.ts';
import { grouped } from './grouped.ts';
import type { HungPiece } from './hungPieces.ts';
import { piecesTold, type Uncut } from './cutFromYard.ts';
import { slug } from './slug.ts';
import { phrase } from '../../phrases/phrase.ts';

interface Rails {
  readonly rail: string;
  readonly pieces: readonly TicketPiece[];
}

const railsOf = (hung: HungPiece): Rails[] => {
  const { infill } = hung.spec;
  if (infill.kind !== 'boards') return [];
  const pieces = baysOf(hung).flatMap(({ from, to, length }) =>
    Array.from({ length: infill.rails }, () => ({
      length,
      for: phrase`${from.tag}–${to.tag} rail`,
    })),
  );
  return [{ rail: infill.rail, pieces }];
};

/**
 * The cuts of rails of boards, by what they are called: from middle to middle of two posts, since they are
 * joined on a post. A cut takes nothing: one that goes over two bays is not cut at all.
 */
export const lumberTickets = (
  all: readonly HungPiece[],
  { lumber }: Pick<Counting, 'lumber'>,
  style: LengthStyle,
): Uncut[] =>
  grouped(all.flatMap(railsOf), ({ rail }) => slug(rail))
    .toSorted((a, b) => ((a[0]?.rail ?? '') < (b[0]?.rail ?? '') ? -1 : 1))
    .flatMap((same): Uncut[] => {
      const [first] = same;
      if (first === undefined) return [];
      const pieces = same.flatMap((one) => one.pieces);
      return [
        {
          code: ['board-rail', slug(first.rail)].filter(Boolean).join(' '),
          item: [phrase`Rail of boards`, first.rail].filter(Boolean).join(', '),
          kind: 'lumber',
          from: [lumber, ...piecesTold(pieces)],
          cut: (offcuts) => ticketOf(pieces, { stick: lumber, offcuts, kerf: inches(0) }, style),
        },
      ];
    });
