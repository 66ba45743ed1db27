import type { Post } from '../post.ts';
import { isWoven } from '../../site/isWoven.ts';
import type { Pipe } from '../../site/pipe.ts';
import { railsOf } from '../../site/railsOf.ts';
import type { Site } from '../../site/site.ts';
import type { Counting } from '../../site/counting.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { pipeSize } from '../../units/pipeSize.ts';
import { jointedTicket } from '../cut/jointedTicket.ts';
import type { TicketPiece } from '../cut/cutTicket.ts';
import { ticketOf } from '../cut/ticketOf.ts';
import { pipeOf } from '../structure/pipeOf.ts';
import { bracesOf } from './braces.ts';
import { fabricSizes } from './fabricSizes.ts';
import type { HungPiece } from './hungPieces.ts';
import { grouped } from './grouped.ts';
import { piecesTold, type Uncut } from './cutFromYard.ts';
import { sizeCodes, sizeWords } from './sizes.ts';
import { joined, phrase } from '../../phrases/phrase.ts';

/** No piece of a rail is shorter than this: ours, no published source. */
const leastRail = inches(24);

/** One piece of pipe, whether it may be joined, and of which pipe it is. */
interface Cut extends TicketPiece {
  readonly pipe: Pipe;
  readonly joined: 'may be' | 'not';
}

const railWords: Readonly<Record<ReturnType<typeof railsOf>[number]['part'], string>> = {
  'top rail': phrase`top rail`,
  'middle rail': phrase`middle rail`,
  'bottom rail': phrase`bottom rail`,
};

const nameOf = ({ posts }: HungPiece): string =>
  [posts[0]?.tag, posts.at(-1)?.tag].map((tag) => tag ?? '?').join('–');

/** Between the faces of the posts at both ends. */
const clearOf = ({ piece, posts }: HungPiece): Inches => {
  const faces = ((posts[0]?.od ?? 0) + (posts.at(-1)?.od ?? 0)) / 2;
  return inches(Math.max(0, piece.length - faces));
};

const pipesOf = (hung: HungPiece): Cut[] => {
  const along = railsOf(hung.spec).map(({ part, pipe }): Cut => ({
    pipe,
    joined: 'may be',
    length: clearOf(hung),
    for: phrase`${nameOf(hung)} ${railWords[part]}`,
  }));
  const braces = bracesOf(hung.piece, hung.spec, hung.posts).map(
    ({ terminal, next, pipe, length }): Cut => ({
      pipe,
      joined: 'not',
      length,
      for: phrase`${terminal.tag}–${next.tag} brace`,
    }),
  );
  return [...along, ...braces].filter(({ length }) => length > 0);
};

const pieceOf = ({ length, for: name }: Cut): TicketPiece => ({ length, for: name });

/** The cuts of rails and braces, pipe by pipe. */
export const railTickets = (
  all: readonly HungPiece[],
  { railStick: stick, kerf }: Counting,
  style: LengthStyle,
): Uncut[] =>
  grouped(
    all.flatMap(pipesOf).toSorted((a, b) => a.pipe.od - b.pipe.od || a.pipe.wall - b.pipe.wall),
    ({ pipe }) => `${pipe.od} ${pipe.wall} ${pipe.label}`,
  ).flatMap((same): Uncut[] => {
    const [first] = same;
    if (first === undefined) return [];
    const asked = {
      rails: same.filter(({ joined: may }) => may === 'may be').map(pieceOf),
      whole: same.filter(({ joined: may }) => may === 'not').map(pieceOf),
      least: leastRail,
    };
    const rail = { rail: first.pipe };
    return [
      {
        code: ['rail', ...sizeCodes(['rail'], rail)].join(' '),
        item: phrase`Rail, ${first.pipe.label}, ${pipeSize(first.pipe.od, style)} OD`,
        kind: 'rail',
        from: [stick, kerf, asked.rails.length, ...piecesTold([...asked.rails, ...asked.whole])],
        cut: (offcuts) => jointedTicket(asked, { stick, offcuts, kerf }, style),
      },
    ];
  });

/** The cuts of fabric from rolls, of every height, mesh and wire: pieces are woven together without loss. */
export const fabricTickets = (
  all: readonly HungPiece[],
  { roll }: Counting,
  style: LengthStyle,
): Uncut[] => {
  const woven = all.filter(({ spec }) => isWoven(spec));
  const sized = woven.map((hung) => ({
    hung,
    fabric: fabricSizes(hung.spec),
  }));
  return grouped(sized, ({ fabric }) => sizeCodes(['fabric'], { fabric }).join()).flatMap(
    (same): Uncut[] => {
      const [first] = same;
      if (first === undefined) return [];
      const sizes = { fabric: first.fabric };
      const asked = {
        rails: same.map(({ hung }) => ({ length: hung.piece.length, for: nameOf(hung) })),
        whole: [],
        least: inches(0),
      };
      return [
        {
          code: ['fabric', ...sizeCodes(['fabric'], sizes)].join(' '),
          item: joined([phrase`Fabric`, ...sizeWords(['fabric'], sizes, style)], ', '),
          kind: 'fabric',
          from: [roll, ...piecesTold(asked.rails)],
          cut: (offcuts) => jointedTicket(asked, { stick: roll, offcuts, kerf: inches(0) }, style),
        },
      ];
    },
  );
};

/** The cuts of posts of round pipe from long pipe, pipe by pipe; none where they are bought cut. */
export const postTickets = (
  posts: readonly Post[],
  site: Site,
  { postStick, kerf }: Counting,
): Uncut[] => {
  if (postStick === null) return [];
  const style = site.lengths;
  const piped = posts.flatMap((post) => {
    const pipe = pipeOf(site, post);
    return pipe === null || post.section === 'square' ? [] : [{ post, pipe }];
  });
  return grouped(
    piped.toSorted((a, b) => a.pipe.od - b.pipe.od || a.pipe.wall - b.pipe.wall),
    ({ pipe }) => `${pipe.od} ${pipe.wall} ${pipe.label}`,
  ).flatMap((same): Uncut[] => {
    const [first] = same;
    if (first === undefined) return [];
    const pieces = same.map(({ post }) => ({ length: post.length, for: post.tag }));
    const size = { rail: first.pipe };
    return [
      {
        code: ['post-pipe', ...sizeCodes(['rail'], size)].join(' '),
        item: phrase`Post pipe, ${first.pipe.label}, ${pipeSize(first.pipe.od, style)} OD`,
        kind: 'post',
        from: [postStick, kerf, ...piecesTold(pieces)],
        cut: (offcuts) => ticketOf(pieces, { stick: postStick, offcuts, kerf }, style),
      },
    ];
  });
};
