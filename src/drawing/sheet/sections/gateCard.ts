import { metName } from '../../../engine/checks/metName.ts';
import type { GateLayout, Layout } from '../../../engine/layout.ts';
import type { Meeting, Surroundings } from '../../../engine/sweep/meetings.ts';
import type { Site } from '../../../site/site.ts';
import { formatAngle } from '../../../units/formatAngle.ts';
import { bareDetail, type BareDetail } from '../../detail/bareDetail.ts';
import { detailCaption } from '../../detail/detailCaption.ts';
import { gateDetail, type GateDetail } from '../../detail/gateDetail.ts';
import { gateSight, type GateSight } from '../../detail/gateSight.ts';
import { standTexts } from '../../detail/standTexts.ts';
import { stopOf } from '../../detail/stopOf.ts';
import { moveAtoms } from '../../moveAtoms.ts';
import type { Block } from '../flow/block.ts';
import type { ColumnSize } from '../flow/paginate.ts';
import { paragraph } from '../flow/paragraph.ts';
import { stackBlocks } from '../flow/stackBlocks.ts';
import { laid } from '../papers.ts';
import { scalesOf, type Scale } from '../scales.ts';
import { sheetFrame } from '../sheetFrame.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** What stands on the card of a gate beside its pictures, set to a width. */
export interface CardParts {
  readonly head: (width: number) => Block;
  readonly texts: readonly string[];
  readonly bar: (width: number) => Block;
  readonly working: (width: number) => Block;
}

/** A card as it was set. */
export interface GateCard {
  readonly block: Block;
  /** The scale of its pictures, ground inches to one of the paper; null where it has none. */
  readonly ratio: number | null;
  /** How many texts of its pictures found no place in them; they are told beside them. */
  readonly left: number;
}

/** Room for a card, and the scale that its pictures are to have at least, ground inches to one of the paper. */
export interface CardRoom extends ColumnSize {
  readonly mostRatio?: number;
}

/** A column from here on has bar and working side by side; bar and working are no narrower than this; inches. */
const sideBySide = 9;
const leastBar = 4;
/** Texts beside a picture are no narrower than this. */
const leastText = 2;
const between = 0.3;
const space: Block = { height: 0.07, atoms: [] };

/** On large papers a card is no higher than on an upright A4, so that a column holds several; paper inches. */
const highestCard = sheetFrame(laid('a4', 'portrait')).content.height;

/** Blocks side by side, their tops level. */
const beside = (left: Block, right: Block, x: number): Block => ({
  height: Math.max(left.height, right.height),
  atoms: [...left.atoms, ...moveAtoms(right.atoms, x, 0)],
});

const written = (texts: readonly string[], width: number): Block =>
  stackBlocks(texts.flatMap((text) => [...paragraph(text, width), space]));

/** Bar and working: beside one another where there is room. */
const figures = ({ bar, working }: CardParts, width: number): Block => {
  if (width < sideBySide) return stackBlocks([bar(width), space, working(width)]);
  const half = (width - between) / 2;
  return beside(bar(half), working(half), half + between);
};

/** A gate's pictures at a scale, and what is written of them. */
interface Drawn {
  readonly detail: GateDetail;
  readonly notes: readonly string[];
}

/** The ways to set a card with its pictures: each as high as it comes. */
const settings = (parts: CardParts, { detail, notes }: Drawn, width: number): Block[] => {
  const picture: Block = { height: detail.height, atoms: detail.atoms };
  const right = width - detail.width - between;
  const head = parts.head(width);
  const all = [...parts.texts, ...notes];
  const under = [head, written(all, width), picture, space, figures(parts, width)];
  const x = detail.width + between;
  const texts = (): Block => beside(picture, written(all, right), x);
  const everything = (): Block =>
    beside(picture, stackBlocks([written(all, right), figures(parts, right)]), x);
  return [
    ...(right >= leastBar ? [stackBlocks([head, everything()])] : []),
    ...(right >= leastText ? [stackBlocks([head, texts(), space, figures(parts, width)])] : []),
    ...(right >= -between ? [stackBlocks(under)] : []),
  ];
};

const lowest = (blocks: readonly Block[]): Block | null =>
  blocks.reduce<Block | null>(
    (least, one) => (least === null || one.height < least.height ? one : least),
    null,
  );

const stopText = (stop: Meeting | null, site: Site): string[] =>
  stop === null
    ? []
    : [
        phrase`Before it is open it meets ${metName(site, stop.met)}, at ${formatAngle(stop.turned)}.`,
      ];

const leftText = (left: readonly string[]): string[] =>
  left.length === 0 ? [] : [phrase`No room in the picture for: ${left.join('; ')}.`];

/** A gate's pictures at a scale before they are lettered, and with what is written of them. */
interface Picture {
  readonly bare: BareDetail;
  readonly drawn: () => Drawn;
}

const pictureAt = (sight: GateSight, site: Site, stop: Meeting | null, scale: Scale): Picture => {
  const bare = bareDetail(sight, site, scale.ratio, stop);
  let known: Drawn | null = null;
  const lettered = (): Drawn => {
    const detail = gateDetail(bare);
    const notes = [
      detailCaption(sight, site, scale),
      ...standTexts(sight, site),
      ...stopText(stop, site),
      ...leftText(detail.left),
    ];
    return { detail, notes };
  };
  return { bare, drawn: () => (known ??= lettered()) };
};

const without = (parts: CardParts, says: string, width: number): GateCard => ({
  block: stackBlocks([
    parts.head(width),
    written([...parts.texts, says], width),
    figures(parts, width),
  ]),
  ratio: null,
  left: 0,
});

interface Pictured {
  readonly sight: GateSight;
  readonly site: Site;
  /** What is drawn at a scale. */
  readonly at: (scale: Scale) => Picture;
}

/** Pictures at some scales, remembered: a card may be set in more than one room. */
const pictures = (sight: GateSight, site: Site, stop: Meeting | null): Pictured['at'] => {
  const known = new Map<number, Picture>();
  return (scale) => {
    const picture = known.get(scale.ratio) ?? pictureAt(sight, site, stop, scale);
    known.set(scale.ratio, picture);
    return picture;
  };
};

/** The least height of a card with pictures that are so large at least, whatever is written beside them. */
const leastHeight = (bare: BareDetail, parts: CardParts, width: number): number => {
  const over = parts.head(width).height + bare.height;
  if (width - bare.width - between >= leastBar) return over;
  return over + space.height + figures(parts, width).height;
};

/** The card with its pictures as large as a room allows; null where it has none for them at any scale. */
const pictured = (
  { sight, site, at }: Pictured,
  parts: CardParts,
  { width, height, mostRatio = Infinity }: CardRoom,
): GateCard | null => {
  const [start, end] = sight.pair;
  const [across, high] = [end.at.x, start.post.above + start.post.hole.depth];
  for (const scale of scalesOf(site.lengths.system)) {
    if (scale.ratio > mostRatio) return null;
    if (across / scale.ratio > width || high / scale.ratio > height) continue;
    const picture = at(scale);
    if (picture.bare.width > width || leastHeight(picture.bare, parts, width) > height) continue;
    const drawn = picture.drawn();
    if (drawn.detail.width > width || drawn.detail.height > height) continue;
    const block = lowest(settings(parts, drawn, width));
    if (block !== null && block.height <= height) {
      return { block, ratio: scale.ratio, left: drawn.detail.left.length };
    }
  }
  return null;
};

/** What a card is of. */
export interface CardFor {
  readonly site: Site;
  readonly layout: Layout;
  readonly around: Surroundings;
}

/**
 * Sets one gate in a room: with its elevation and plan at the largest standard scale at which its whole card has room,
 * its bar, its working and what is written of it, not broken. A gate that is not placed has no pictures, and says
 * so; so does one whose card would be higher than its room.
 */
export const gateCard = (
  gate: GateLayout,
  { site, layout, around }: CardFor,
  parts: CardParts,
): ((room: CardRoom) => GateCard) => {
  const sight = gateSight(site, layout, gate);
  if (sight === null) {
    const says = phrase`No detail is drawn before the gate is placed: see its flag.`;
    return ({ width }) => without(parts, says, width);
  }
  const stop = stopOf(sight.gate, gate, around);
  const seen = { sight, site, at: pictures(sight, site, stop) };
  // nothing hangs in a gap: two posts want no whole page
  const moves = sight.leaves.length + sight.slides.length > 0;
  const highest = moves ? highestCard : highestCard / 2;
  return (room) => {
    const height = Math.min(room.height, highest);
    return (
      pictured(seen, parts, { ...room, height }) ??
      without(parts, phrase`Its detail has no room on this paper.`, room.width)
    );
  };
};
